import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { takenIn } from '../../figure/entry-ids.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { OutlookAnswer } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import type { Subject } from './subjects.ts'

export interface OutlookGround {
  readonly answer: OutlookAnswer
  readonly data: SystemData
}

/** A fan at one of its days, as a figure. */
export function fanFigure(subject: Subject, step: number, ground: OutlookGround): ComputedFigure {
  const { days, quantiles } = subject.fan
  const at = (quantile: keyof typeof quantiles) => (quantiles[quantile][step] ?? Number.NaN) * subject.factor
  const day = days[step] ?? ground.answer.outlook.asOf
  return {
    id: `fan.${subject.key}.${new Date(day * 86_400_000).toISOString().slice(0, 10)}`,
    name: `${subject.name} on ${dayText(day, ground.data.system.timeZone)}`,
    value: at('p50'),
    low: at('p05'),
    high: at('p95'),
    unit: subject.unit,
    derivation: () => derivationOfFan(subject, ground),
  }
}

function derivationOfFan(subject: Subject, { answer, data }: OutlookGround): Derivation {
  const { outlook, bands } = answer
  const processes = answer.processes.filter(({ accounts }) =>
    accounts.some((account) => account.startsWith(accountBehind(subject))),
  )
  const band = bands.find((candidate) => candidate.quantity === subject.fan.quantity)
  return {
    says: `${outlook.members} simulated tanks, each with its own values of the facts, are weighed by how well they meet your ${outlook.readingsUsed} readings.`,
    steps: [
      {
        formula: 'figure = weighted median of the tanks; brackets = their 5 % and 95 % points',
        withValues: `tanks that count: ${outlook.effectiveMembers.toFixed(0)} of ${outlook.members}`,
      },
      {
        formula: 'weight = likelihood of your readings ^ tempering',
        withValues: `tempering = ${outlook.tempering.toFixed(2)}${outlook.tempering < 1 ? ': your readings count less than in full, so that enough tanks stay' : ': your readings count in full'}`,
      },
    ],
    processes,
    facts: band ? [band.fact] : [],
    entries: takenIn(data),
  }
}

/** Start of the ids of the accounts that the fan shows. */
function accountBehind({ fan }: Subject): string {
  return fan.quantity === 'cover' ? `surface.${fan.surface}.${fan.algae}` : `water.${fan.quantity}`
}

/** The step of a fan nearest to a day. */
export function stepAt(subject: Subject, day: number): number {
  let best = 0
  subject.fan.days.forEach((candidate, i) => {
    if (Math.abs(candidate - day) < Math.abs((subject.fan.days[best] ?? 0) - day)) best = i
  })
  return best
}
