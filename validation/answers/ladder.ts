/** Answers on what to do: the first rung, what is not offered, and which warnings stand on the page. */
import { isNoModel } from '../model-answers.ts'
import { CannotAnswer, type Family } from './answer.ts'

/** Rungs that only watch: an expert's first measure is the one beyond them. */
const watching: readonly string[] = ['wait', 'find_out', 'leave', 'keep_out', 'steady_values']

/** Tokens of the cases for a measure that goes by another name, or is one way of a wider one. */
const alsoCalled: Readonly<Record<string, readonly string[]>> = {
  hand_removal_siphon: ['hand_removal'],
  water_change_large: ['large_water_changes'],
}

const namesOf = (measure: string): readonly string[] => [measure, ...(alsoCalled[measure] ?? [])]

/** Medicine before all else is a mistake of its own; medicine after what is gentler is none. */
const mistakes = (first: string | undefined): readonly string[] =>
  first === 'ask_veterinarian' ? ['antibiotic_first'] : []

const firstOf = (measures: readonly string[]): string | undefined =>
  measures.find((measure) => !watching.includes(measure))

export const ladderAnswers: Family = {
  measure_first: {
    unit: 'words',
    keys: ['at'],
    answer: ({ file, model }) => {
      const offered = model.ladder(file)
      if (isNoModel(offered)) return offered
      const first = firstOf(offered.measures)
      if (first === undefined) throw new CannotAnswer('the ladder offers nothing beyond watching')
      return { value: first, alsoCalled: [...namesOf(first), ...mistakes(first)] }
    },
  },
  measure_not: {
    unit: 'words',
    answer: ({ file, model, words }) => {
      const offered = model.ladder(file)
      if (isNoModel(offered)) return offered
      // What stands last, under a warning, is not what one is sent to.
      const names = [
        ...offered.measures.filter((one) => one !== offered.lastWithWarning).flatMap(namesOf),
        ...mistakes(firstOf(offered.measures)),
      ]
      return { value: words.filter((word) => !names.includes(word)), anyOrder: true }
    },
  },
  caution_shown: {
    unit: 'words',
    answer: ({ file, model }) => {
      const offered = model.ladder(file)
      return isNoModel(offered) ? offered : { value: offered.cautions, anyOrder: true }
    },
  },
}
