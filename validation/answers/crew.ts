/** Answers on surfaces and the animals that graze them. */
import { tasteAtHeight } from '@holdfast/ecosystem'
import { catalogueAlone, taste } from '@holdfast/facts'
import type { Check } from '../case-file.ts'
import { algaeKey } from '../case-system.ts'
import { isNoModel } from '../model-answers.ts'
import { animalsCalled } from './animal-words.ts'
import {
  type Answered,
  CannotAnswer,
  type Family,
  needed,
  numberIn,
  type Question,
  textIn,
} from './answer.ts'

export const crewAnswers: Family = {
  most_exposed_surface: {
    unit: 'words',
    answer: ({ file, model }) => {
      const ungrazed = model.ungrazed(file)
      if (isNoModel(ungrazed)) return ungrazed
      const [first] = [...ungrazed].sort(([, a], [, b]) => b - a)
      return { value: needed(first, 'a surface')[0] }
    },
  },
  grazing_capacity_at_surface: {
    unit: 'mg dry a day',
    keys: ['surface'],
    answer: ({ file, check, model }) => {
      const capacity = model.grazingCapacity(file, needed(textIn(check, 'surface'), 'a surface'))
      return isNoModel(capacity) ? capacity : { value: capacity }
    },
  },
  crew_must_include_group: { unit: 'words', answer: (question) => named(question, (count) => count > 0) },
  crew_must_not_include: { unit: 'words', answer: (question) => named(question, (count) => count === 0) },
  crew_size_first_step: {
    unit: '1',
    keys: ['group', 'taxon'],
    answer: ({ file, check, model }) => {
      const proposed = model.proposedCrew(file)
      if (isNoModel(proposed)) return proposed
      const taxa = taxaIn(check) ?? [...proposed.firstStep.keys()]
      return { value: taxa.reduce((sum, taxon) => sum + (proposed.firstStep.get(taxon) ?? 0), 0) }
    },
  },
  crew_count_max: {
    unit: '1',
    keys: ['group', 'taxon'],
    answer: ({ file, check, model }) => {
      const most = model.mostOfCrew(file, needed(taxaIn(check), 'a taxon or group'))
      return isNoModel(most) ? most : { value: most }
    },
  },
  crew_hungry: {
    unit: 'yes or no',
    keys: ['after', 'days'],
    answer: ({ file, check, model }) => {
      const after = textIn(check, 'after') ?? ''
      const days = numberIn(check, 'days') ?? Number(/(\d+) days/.exec(after)?.[1] ?? 60)
      if (!/propos/.test(after)) {
        const hungry = model.hungry(file, days)
        return isNoModel(hungry) ? hungry : { value: hungry }
      }
      const proposed = model.proposedCrew(file)
      return isNoModel(proposed) ? proposed : { value: proposed.hungryWithin(days) }
    },
  },
  diet_score: {
    unit: 'words',
    keys: ['group', 'taxon', 'algae', 'height_mm'],
    answer: ({ check }) => {
      const kind = algaeKey(needed(textIn(check, 'algae'), 'a kind of algae'))
      const height = numberIn(check, 'height_mm')
      const scores = needed(taxaIn(check), 'a taxon or group')
        .map((taxon) =>
          height === undefined
            ? taste(taxon, kind).preference
            : tasteAtHeight(taxon, kind, height, catalogueAlone),
        )
        .sort((a, b) => a - b)
      return { value: scoreWord(scores[Math.floor((scores.length - 1) / 2)]) }
    },
  },
}

/** Of the words of the question those of which the proposed crew has as many animals as asked. */
function named({ file, model, words }: Question, asked: (count: number) => boolean): Answered {
  const proposed = model.proposedCrew(file)
  if (isNoModel(proposed)) return proposed
  const countOf = (word: string): number =>
    taxaCalled(word).reduce((sum, taxon) => sum + (proposed.crew.get(taxon) ?? 0), 0)
  return { value: words.filter((word) => asked(countOf(word))), anyOrder: true }
}

/** @throws CannotAnswer where no animal of the catalogue is called so */
export function taxaCalled(word: string): readonly string[] {
  const found = animalsCalled(word)
  if (found.length === 0) throw new CannotAnswer(`no animal of the catalogue is called "${word}"`)
  return found.map(({ taxon }) => taxon)
}

function taxaIn(check: Check): readonly string[] | undefined {
  const word = textIn(check, 'taxon', 'group')
  return word === undefined ? undefined : taxaCalled(word)
}

/** The limits of the words for a taste. */
function scoreWord(score: number): string {
  if (score < 0.1) return 'no'
  if (score <= 0.3) return 'little'
  return score <= 0.6 ? 'some' : 'yes'
}
