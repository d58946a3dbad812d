import type { Grazer } from '@holdfast/facts'
import type { CrewProgramme } from './crew-programme.ts'
import type { Taken } from './hands.ts'
import { type Step, stepsOf } from './steps.ts'
import type { Change } from './trial-run.ts'

/** A solved programme in animals. */
export interface Crew {
  readonly numbers: readonly {
    readonly animal: Grazer
    readonly there: number
    readonly come: number
    readonly leave: number
  }[]
  readonly byHand: readonly Taken[]
  readonly steps: readonly Step[]
}

/** Where the hand has less than this share of growth, what little is left is nobody's work. */
const handShare = 0.2

/** @param apart_days  between two steps */
export function crewOfSolution(
  { numbers, byHand }: CrewProgramme,
  values: readonly number[],
  apart_days: number,
): Crew {
  const chosen = numbers
    .map(({ animal, there, stay, come }) => ({
      animal,
      there,
      come: values[come],
      leave: there - values[stay],
    }))
    .filter(({ there, come }) => there + come > 0)
  const taken = byHand
    .map(({ place, column, share }) => ({ ...place, byHand_g_d: share * values[column] }))
    .filter(({ byHand_g_d, growth_g_d }) => byHand_g_d > handShare * growth_g_d)
  return inSteps(chosen, taken, apart_days)
}

/** Those that come, in steps so many days apart. */
export function inSteps(numbers: Crew['numbers'], byHand: Crew['byHand'], apart_days: number): Crew {
  const comers = numbers.filter(({ come }) => come > 0).map(({ animal, come }) => ({ animal, count: come }))
  return { numbers, byHand, steps: stepsOf(comers, apart_days) }
}

/** Who comes and goes on which day. */
export const changesOf = ({ numbers, steps }: Crew, day: number): readonly Change[] => [
  ...numbers
    .filter(({ leave }) => leave > 0)
    .map(({ animal, leave }) => ({ day, taxon: animal.taxon, count: -leave })),
  ...steps.flatMap(({ after_days, animals }) => animals.map((one) => ({ day: day + after_days, ...one }))),
]
