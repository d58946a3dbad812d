/** Answers that the model gives: where the water levels off, what levers do, media, growth. */
import { daysBetween } from '../calendar.ts'
import type { CaseFile, Check } from '../case-file.ts'
import { algaeKey } from '../case-system.ts'
import { isNoModel, type Lever, type NoModel } from '../model-answers.ts'
import {
  type Answered,
  CannotAnswer,
  type Family,
  needed,
  numberIn,
  type Question,
  textIn,
} from './answer.ts'
import { taxaCalled } from './crew.ts'
import { kitStep } from './trends.ts'

export const modelAnswers: Family = {
  nitrate_equilibrium_before_change_mg_L: {
    unit: 'mg/L NO3',
    answer: ({ file, model }) => of(model.equilibrium(file), ({ before }) => before),
  },
  nitrate_equilibrium_after_change_mg_L: {
    unit: 'mg/L NO3',
    answer: ({ file, model }) => of(model.equilibrium(file), ({ after }) => after),
  },
  response: {
    unit: 'words',
    keys: ['lever', 'change_factor', 'add', 'of', 'days', 'against'],
    answer: (question) => {
      const both = withAndWithout(question)
      if (isNoModel(both)) return both
      return { value: responseWord(both.without, both.with, both.step) }
    },
  },
  response_factor: {
    unit: '1',
    keys: ['lever', 'change_factor', 'of', 'days', 'against'],
    answer: (question) => {
      const both = withAndWithout(question)
      return isNoModel(both) ? both : { value: both.with / both.without }
    },
  },
  media_exhausted: {
    unit: 'yes or no',
    keys: ['media'],
    answer: ({ file, model }) => of(model.mediaExhaustedAfter(file, 0), (day) => Number.isFinite(day)),
  },
  media_exhausted_day: {
    unit: 'd since placing',
    keys: ['media'],
    answer: ({ file, model }) => of(model.mediaExhaustedAfter(file, 365), (day) => day),
  },
  limiting_nutrient: {
    unit: 'words',
    keys: ['process', 'algae'],
    answer: ({ file, check, model }) =>
      textIn(check, 'process') === 'organic_carbon_dosing'
        ? of(model.limitingBacteria(file), (word) => word)
        : of(model.limiting(file, algaeKey(needed(textIn(check, 'algae'), 'algae'))), (word) => word),
  },
  growth_positive: {
    unit: 'yes or no',
    keys: ['surface', 'algae'],
    answer: (question) => of(growthAsked(question), ({ gross }) => gross > 0),
  },
  net_growth_sign: {
    unit: 'words',
    keys: ['surface', 'algae'],
    answer: (question) =>
      of(growthAsked(question), ({ net }) => (net === 0 ? 'zero' : net > 0 ? 'positive' : 'negative')),
  },
}

function of<T>(answer: T | NoModel, read: (answer: T) => number | string | boolean): Answered {
  return isNoModel(answer) ? answer : { value: read(answer) }
}

function growthAsked({ file, check, model }: Question) {
  const surface = needed(textIn(check, 'surface'), 'surface')
  return model.growth(file, surface, algaeKey(needed(textIn(check, 'algae'), 'algae')))
}

function withAndWithout(question: Question) {
  const { file, check, model } = question
  const { moved: movedFile, lever } = leverAsked(question)
  const asked = needed(textIn(check, 'of'), 'of')
  const days = numberIn(check, 'days') ?? daysBetween(file.start, file.asof)
  const run = (of: CaseFile, moved?: Lever): { readonly value: number | NoModel; readonly step: number } => {
    if (asked === 'nitrate' || asked === 'phosphate')
      return { value: model.outlook(of, asked, days, moved), step: kitStep(asked) }
    const [, surface, algae] = /^cover:([^:]+):(.+)$/.exec(asked) ?? []
    if (surface !== undefined && algae !== undefined)
      return { value: model.cover(of, surface, algaeKey(algae), days, moved), step: 0 }
    const [, side] = /^nitrate_equilibrium_(before|after)_change_mg_L$/.exec(asked) ?? []
    if (side !== 'before' && side !== 'after')
      throw new CannotAnswer(`of: "${asked}" is no course of the outlook`)
    const level = model.equilibrium(of, moved)
    return { value: isNoModel(level) ? level : level[side], step: kitStep('nitrate') }
  }
  const without = run(file)
  const moved = run(movedFile, lever)
  if (isNoModel(without.value)) return without.value
  if (isNoModel(moved.value)) return moved.value
  return { without: without.value, with: moved.value, step: without.step }
}

/** The case with what is moved: a factor on its husbandry, or more animals from today on. */
function leverAsked({ file, check }: Question): { readonly moved: CaseFile; readonly lever?: Lever } {
  const lever = textIn(check, 'lever')
  if (lever === 'crew') return { moved: withMoreAnimals(file, check) }
  if (lever !== 'feed' && lever !== 'foam_rate' && lever !== 'carbon_dose')
    throw new CannotAnswer(`lever: "${lever}" is not one we move`)
  return { moved: file, lever: { lever, factor: needed(numberIn(check, 'change_factor'), 'change_factor') } }
}

/** Animals of a group are those of it that live there, else the one of the catalogue that stands first. */
function withMoreAnimals(file: CaseFile, { add }: Check): CaseFile {
  const { taxon, group, count } = (add ?? {}) as Readonly<Record<string, unknown>>
  const taxa = taxaCalled(String(taxon ?? group))
  const living = file.system.animals.find((one) => one.taxon !== undefined && taxa.includes(one.taxon))?.taxon
  const more = living ?? taxa[0]
  const arrival = { date: file.asof, kind: 'animals added', taxon: more, count: Number(count) }
  const none = living === undefined ? [{ kind: more, taxon: more, count: 0, role: 'grazer' as const }] : []
  return {
    ...file,
    system: { ...file.system, animals: [...file.system.animals, ...none] },
    log: { ...file.log, events: [...file.log.events, arrival] },
  }
}

/** By a tenth and more, by 3 % and more, else unchanged; a move under one step of the kit is none. */
function responseWord(without: number, moved: number, step: number): string {
  const change = (moved - without) / Math.abs(without)
  if (Math.abs(moved - without) < step || Math.abs(change) < 0.03 || !Number.isFinite(change))
    return 'unchanged'
  const word = change > 0 ? 'rises' : 'falls'
  return Math.abs(change) >= 0.1 ? word : `${word}_slowly`
}
