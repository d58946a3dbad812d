import { type Model, pairs, settingsOn, simulateTogether, startsOf, timeline } from '@holdfast/ecosystem'
import { algaeKind } from '@holdfast/facts'
import { assembledOn } from '../assembled-on.ts'
import { drawnNames, parametersOf, type Scores } from '../members.ts'
import { normalQuantile } from '../normal-quantile.ts'
import { openingOn } from '../opening.ts'
import type { OutlookQuestion } from '../outlook-types.ts'
import { type Seen, seenIn } from '../quantities-seen.ts'
import { quietly, type Running, stopped } from '../running.ts'
import { type Evaluate, morris } from './morris.ts'
import { sobol, type VarianceShares } from './sobol.ts'

/** The question of an outlook, asked of facts and not of members. */
export interface SensitivityQuestion extends Omit<OutlookQuestion, 'members'> {
  /** Walks of the screening; each takes a run for every fact and one more. */
  readonly walks: number
  /** So many facts that move most of each quantity have their shares of the variance worked out. */
  readonly closer: number
  /** Samples of the shares; each takes a run for every fact looked at closer, and two more. */
  readonly samples: number
}

/** How one fact moves one quantity. */
export interface FactMoves {
  /** Id of the fact, or `opening nitrate`, `opening phosphate` for the error of the reading at the start. */
  readonly fact: string
  /** Mean change when the fact goes up or down by half of its prior, in the unit of the quantity. */
  readonly moves: number
  /** Spread of that change: large where it depends on the other facts. */
  readonly spread: number
  /** Shares of the variance, where it was looked at closer. */
  readonly shares?: VarianceShares
}

export interface Sensitivity {
  readonly quantity: 'nitrate' | 'phosphate' | 'cover'
  readonly unit: string
  /** The fact that moves it most first; all facts. */
  readonly facts: readonly FactMoves[]
}

export interface SensitivityAnswer {
  readonly days: number
  readonly runs: number
  readonly sensitivities: readonly Sensitivity[]
}

/**
 * Which facts move nitrate, phosphate and cover most after some days of the usual husbandry: all are screened
 * (morris.ts), and those that move most share out the variance (sobol.ts), the others at typical.
 */
export function sensitivity(question: SensitivityQuestion, running: Running = quietly): SensitivityAnswer {
  const { seed, walks, closer, samples } = question
  const model = assembledOn(ofOne(question), question.asOf)
  const names = drawnNames(model)
  const looked = Math.min(names.length, closer * quantities.length)
  const total = walks * (names.length + 1) + samples * (looked + 2)
  let runs = 0
  const counted = (some: number): void => {
    if (running.cancelled()) throw stopped
    runs += some
    running.onProgress(Math.min(1, runs / total))
  }
  const at = evaluateAt(question, model, counted)
  const effects = morris(at(names), names.length, walks, seed)
  const order = effects.map((list) =>
    names.map((_, i) => i).sort((p, q) => list[q].mean - list[p].mean || p - q),
  )
  const closest = [...new Set(order.flatMap((list) => list.slice(0, closer)))].map((i) => names[i])
  const shares =
    closest.length > 0 && samples > 0 ? sobol(at(closest), closest.length, samples, seed) : undefined
  return {
    days: question.horizonDays,
    runs,
    sensitivities: quantities.map(({ quantity, unit }, which) => ({
      quantity,
      unit,
      facts: order[which].map((i): FactMoves => {
        const of = shares?.[which][closest.indexOf(names[i])]
        const { mean, spread } = effects[which][i]
        return { fact: names[i], moves: mean, spread, ...(of && { shares: of }) }
      }),
    })),
  }
}

const ofOne = (question: SensitivityQuestion): OutlookQuestion => ({ ...question, members: 1 })

const quantities = [
  { quantity: 'nitrate', unit: 'mg/L NO3' },
  { quantity: 'phosphate', unit: 'mg/L PO4' },
  { quantity: 'cover', unit: 'share' },
] as const

/** The quantities on the last day as a function of the probabilities of some facts; the others stay at typical. */
function evaluateAt(
  question: SensitivityQuestion,
  model: Model,
  counted: (runs: number) => void,
): (names: readonly string[]) => Evaluate {
  const { asOf, horizonDays } = question
  const { system, facts } = model
  const to = asOf + horizonDays
  const past = timeline({ ...question, system, facts, from: question.from, to: asOf })
  const moments = timeline({ ...question, system, facts, from: asOf, to })
  const settings = settingsOn(model, past, asOf)
  const results = resultsOf(model, seenIn(model))
  return (names) => (points) =>
    pairs(points).flatMap((pair) => {
      const members = pair.map((point) => {
        const scores: Scores = new Map(names.map((name, i) => [name, normalQuantile(point[i])]))
        const parameters = parametersOf(model, scores)
        return { parameters, opening: openingOn(ofOne(question), asOf, scores, facts) }
      })
      const starts = startsOf(model, members, asOf, settings)
      const runs = simulateTogether(
        { model, from: asOf, to, settings, timeline: moments },
        members.map(({ parameters }, m) => ({ parameters, start: starts[m] })),
      )
      counted(pair.length)
      return runs.map(({ end }, m) => results(end, members[m].parameters))
    })
}

/** Nitrate, phosphate, and the mean cover of what is no crust, by area. */
function resultsOf(
  { system }: Model,
  seen: readonly Seen[],
): (states: Float64Array, parameters: Float64Array) => readonly number[] {
  const water = (quantity: Seen['quantity']) => seen.filter((one) => one.quantity === quantity)
  const area = new Map(system.surfaces.map(({ id, area_m2 }) => [id, area_m2]))
  const whole = system.surfaces.reduce((sum, { area_m2 }) => sum + area_m2, 0)
  const covers = seen.flatMap(({ quantity, surface, algae, of }) =>
    quantity === 'cover' && surface !== undefined && algae !== undefined && !isCrust(algae)
      ? [{ share: (area.get(surface) ?? 0) / whole, of }]
      : [],
  )
  return (states, parameters) => [
    ...[...water('nitrate'), ...water('phosphate')].map(({ of }) => of(states, parameters)),
    covers.reduce((sum, { share, of }) => sum + share * of(states, parameters), 0),
  ]
}

const isCrust = (kind: string): boolean => algaeKind(kind).form.startsWith('crust')
