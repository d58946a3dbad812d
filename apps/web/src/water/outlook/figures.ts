import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { takenIn } from '../../figure/entry-ids.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { countText } from '../../ways/counts.ts'
import { withMark } from '../../ways/decimal.ts'
import type { OutlookAnswer } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import type { Alternative } from './alternative.ts'
import { intervalOfShare, type WeekAhead } from './chance.ts'
import type { Subject } from './subjects.ts'

export interface OutlookGround {
  readonly answer: OutlookAnswer
  readonly data: SystemData
  /** Under which levers, where not under today's husbandry. */
  readonly under?: { readonly mark: Alternative['mark']; readonly name: string }
}

/** A fan at one of its days, as a figure. */
export function fanFigure(subject: Subject, step: number, ground: OutlookGround): ComputedFigure {
  const { days, quantiles } = subject.fan
  const at = (quantile: keyof typeof quantiles) => (quantiles[quantile][step] ?? Number.NaN) * subject.factor
  const day = days[step] ?? ground.answer.outlook.asOf
  return {
    ...named(`fan.${subject.key}.${isoDay(day)}`, `${subject.name} on ${dayIn(day, ground)}`, ground),
    value: at('p50'),
    low: at('p05'),
    high: at('p95'),
    unit: subject.unit,
    derivation: () =>
      derivationOfFan(
        subject,
        ground,
        'figure = weighted median of the tanks; brackets = their 5 % and 95 % points',
      ),
  }
}

/** Whole ones: so many tanks cannot tell a chance more finely. */
const inPercent = (share: number): number => Math.round(100 * share)

/** The chance that the water is in band on a day of a week to come, per cent. */
export function chanceFigure(subject: Subject, { from, to, chance }: WeekAhead, ground: OutlookGround) {
  const { low, high } = intervalOfShare(chance, ground.answer.outlook.effectiveMembers)
  const week = `from ${dayIn(from + 1, ground)} to ${dayIn(to, ground)}`
  return {
    ...named(
      `chance.${subject.key}.${isoDay(to)}`,
      `Chance that ${lowered(subject)} is in band ${week}`,
      ground,
    ),
    value: inPercent(chance),
    low: inPercent(low),
    high: inPercent(high),
    unit: '%',
    derivation: () =>
      derivationOfFan(
        subject,
        ground,
        'figure = weight of the tanks that are in band, mean over the days of the week; brackets = what so many tanks tell of a share (Wilson 1927)',
      ),
  } satisfies ComputedFigure
}

const isoDay = (day: number) => new Date(day * 86_400_000).toISOString().slice(0, 10)
const dayIn = (day: number, { data }: OutlookGround) => dayText(day, data.system.timeZone)
const lowered = ({ name }: Subject) => name.charAt(0).toLowerCase() + name.slice(1)

/** Under other levers the same figure is another one. */
const named = (id: string, name: string, { under }: OutlookGround) =>
  under ? { id: `${id}.${under.mark}`, name: `${name}, with ${under.name}` } : { id, name }

function derivationOfFan(subject: Subject, { answer, data }: OutlookGround, formula: string): Derivation {
  const { outlook, bands } = answer
  const processes = answer.processes.filter(({ accounts }) =>
    accounts.some((account) => account.startsWith(accountBehind(subject))),
  )
  const band = bands.find((candidate) => candidate.quantity === subject.fan.quantity)
  return {
    says: `${outlook.members} simulated tanks, each with its own values of the facts, are weighed by how well they meet your ${outlook.readingsUsed} readings.`,
    steps: [
      {
        formula,
        withValues: `tanks that count: ${countText(Math.round(outlook.effectiveMembers))} of ${outlook.members}`,
      },
      {
        formula: 'weight = likelihood of your readings ^ tempering',
        withValues: `tempering = ${withMark(outlook.tempering.toFixed(2))}${outlook.tempering < 1 ? ': your readings count less than in full so that enough tanks stay' : ': your readings count in full'}`,
      },
    ],
    processes,
    facts: band ? [band.fact] : [],
    entries: takenIn(data),
  }
}

/** Start of the ids of the accounts that the fan shows. */
function accountBehind({ fan }: Subject): string {
  if (fan.quantity === 'cover') return `surface.${fan.surface}.${fan.algae}`
  return fan.quantity === 'media load' ? 'media.ferric' : `water.${fan.quantity}`
}

/** The step of a fan nearest to a day. */
export function stepAt(subject: Subject, day: number): number {
  let best = 0
  subject.fan.days.forEach((candidate, i) => {
    if (Math.abs(candidate - day) < Math.abs((subject.fan.days[best] ?? 0) - day)) best = i
  })
  return best
}
