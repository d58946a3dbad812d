import type { ComputedFigure } from '../../figure/computed.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { OutlookAnswer } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import type { Subject } from './subjects.ts'

export interface OutlookGround {
  readonly answer: OutlookAnswer
  readonly data: SystemData
}

/** A fan at one of its days, as a figure. */
export function fanFigure(subject: Subject, step: number, { answer, data }: OutlookGround): ComputedFigure {
  const { days, quantiles } = subject.fan
  const at = (quantile: keyof typeof quantiles) => (quantiles[quantile][step] ?? Number.NaN) * subject.factor
  const day = days[step] ?? answer.outlook.asOf
  const { outlook } = answer
  const used = new Set(
    data.observations.filter((reading) => reading.day <= outlook.asOf).map((reading) => reading.entry),
  )
  const band = answer.bands.find((candidate) => candidate.quantity === subject.fan.quantity)
  const facts = new Map(
    [...answer.processes.flatMap((process) => process.facts), ...(band ? [band.fact] : [])].map((fact) => [
      fact.id,
      fact,
    ]),
  )
  return {
    name: `${subject.name} on ${dayText(day, data.system.timeZone)}`,
    value: at('p50'),
    low: at('p05'),
    high: at('p95'),
    unit: subject.unit,
    derivation: {
      says: `${outlook.members} simulated tanks, each with its own values of the facts, are weighed by how well they meet your ${outlook.readingsUsed} readings.`,
      steps: [
        {
          formula: 'figure = weighted median of the tanks; brackets = their 5 % and 95 % points',
          withValues: `tanks that count: ${outlook.effectiveMembers.toFixed(0)} of ${outlook.members}`,
        },
        ...(outlook.tempering < 1
          ? [
              {
                formula: 'weight = likelihood of your readings ^ tempering',
                withValues: `tempering = ${outlook.tempering.toFixed(2)}: your readings count less than in full, so that enough tanks stay`,
              },
            ]
          : [{ formula: 'weight = likelihood of your readings', withValues: '' }]),
        ...answer.processes.map((process) => ({
          formula: `${process.title}: ${process.formula}`,
          withValues: '',
        })),
      ],
      facts: [...facts.values()],
      entries: data.entries.filter((entry) => used.has(entry.id)),
    },
  }
}

/** The step of a fan nearest to a day. */
export function stepAt(subject: Subject, day: number): number {
  let best = 0
  subject.fan.days.forEach((candidate, i) => {
    if (Math.abs(candidate - day) < Math.abs((subject.fan.days[best] ?? 0) - day)) best = i
  })
  return best
}
