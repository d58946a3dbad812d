/** Amounts that came in beyond the usual, and what they can do to the water. */
import { fact } from '@holdfast/facts'
import { molarMass } from '@holdfast/quantities'
import { compoundNamed, massFraction } from '@holdfast/seawater'
import { daysBetween } from '../calendar.ts'
import type { CaseEvent, CaseFile } from '../case-file.ts'
import { atomInRation, eventsOf, rations, stayed, usualRation } from '../husbandry.ts'
import { inputSums, total } from '../input-sums.ts'
import { isNoModel } from '../model-answers.ts'
import {
  CannotAnswer,
  type Family,
  needed,
  numberIn,
  type Question,
  spanOf,
  textIn,
  waterVolume,
} from './answer.ts'
import { readingsOf, usualValue } from './readings.ts'

/** g N in a gram of whole wet fish, 0.024 to 0.030. Sterner & George 2000; Schindler & Eby 1997 (memory). */
const nitrogenOfFish = 0.027

const perN = molarMass('NO3') / molarMass('N')

export const amountAnswers: Family = {
  extra_input_N_mg: { unit: 'mg N', answer: (question) => ({ value: extraFed(question) }) },
  dead_animal_N_mg: {
    unit: 'mg N',
    keys: ['N_mass_fraction', 'N_of_wet_mass', 'date'],
    answer: (question) => ({ value: inTheDead(question) }),
  },
  nitrate_rise_mg_L: {
    unit: 'mg/L NO3',
    keys: ['source', 'N_mg', 'N_mass_fraction', 'N_of_wet_mass', 'date'],
    answer: (question) => ({ value: (extraNitrogen(question) * perN) / waterVolume(question.file) }),
  },
  fraction_of_N_input_seen_as_nitrate_rise: {
    unit: '1',
    answer: ({ file, check }) => ({ value: seenAsRise(file, spanOf(file, check)) }),
  },
  PO4_removed_total_mg: {
    unit: 'mg PO4',
    keys: ['media'],
    answer: ({ file, check, model }) => {
      const { from, to } = spanOf(file, check)
      const taken = model.takenByMedia(file, from, to)
      return isNoModel(taken) ? taken : { value: taken }
    },
  },
  unremoved_fraction: {
    unit: '1',
    keys: ['interval_days', 'process', 'decay_per_day'],
    answer: (question) => ({ value: leftWhenEmptied(question) }),
  },
}

/** Fed beyond the usual ration, and food that fell in at once (a dose of one of the system's feeds). */
function extraFed({ file, check }: Question): number {
  const { from, to } = spanOf(file, check)
  const usual = usualRation(file)
  const grams = rations(file, from, to).reduce((sum, ration) => sum + Math.max(0, ration - usual), 0)
  const spilled = eventsOf(file, 'dose')
    .filter(({ date }) => date >= from && date <= to)
    .map((event) => {
      const feed = file.system.feeds.find(({ kind }) => kind === event.substance)
      return feed === undefined ? 0 : Number(event.mass_g) * (feed.N_mass_fraction ?? 0)
    })
  return 1000 * (grams * atomInRation(file, 'N') + spilled.reduce((sum, each) => sum + each, 0))
}

/** Animals that were lost and, unless the note says that they were got out, stayed. */
function inTheDead(question: Question): number {
  const { file, check } = question
  const { from, to } = spanOf(file, check)
  const date = textIn(check, 'date')
  const share = nitrogenShareOfAnimals(question)
  return eventsOf(file, 'animals lost')
    .filter((event) => (date === undefined ? event.date >= from && event.date <= to : event.date === date))
    .filter(stayed)
    .reduce((sum, event) => sum + 1000 * Number(event.count) * massOfOne(file, event) * share, 0)
}

function massOfOne({ system }: CaseFile, event: CaseEvent): number {
  const held = system.animals.find(({ taxon, kind }) => taxon === event.taxon || kind === event.taxon)
  const mass_g = event.mass_g ?? held?.mass_g
  return needed(typeof mass_g === 'number' ? mass_g : undefined, `mass_g of one ${event.taxon}`)
}

/** As the check or `given` says; else that of whole fish. */
function nitrogenShareOfAnimals({ file, check }: Question): number {
  const given = Object.entries(file.given ?? {}).find(
    ([key, value]) =>
      /(animal|fish|body|wet|dead|carcass)/i.test(key) &&
      /(^|_)N(_|$)/.test(key) &&
      typeof value === 'number',
  )?.[1]
  return (
    numberIn(check, 'N_mass_fraction', 'N_of_wet_mass') ??
    (typeof given === 'number' ? given : nitrogenOfFish)
  )
}

/** From the source named, or from all that is out of the ordinary. */
function extraNitrogen(question: Question): number {
  const { check, file } = question
  const amount = numberIn(check, 'N_mg')
  if (amount !== undefined) return amount
  const { from, to } = spanOf(file, check)
  const dosed = eventsOf(file, 'dose')
    .filter(({ date }) => date >= from && date <= to)
    .map((event) => {
      const compound = compoundNamed(String(event.substance))
      return compound === undefined ? 0 : 1000 * Number(event.mass_g) * massFraction(compound, 'N')
    })
    .reduce((sum, each) => sum + each, 0)
  const sources: Readonly<Record<string, () => number>> = {
    feed: () => extraFed(question),
    animals: () => inTheDead(question),
    dose: () => dosed,
  }
  const source = textIn(check, 'source')
  if (source === undefined) return Object.values(sources).reduce((sum, each) => sum + each(), 0)
  return needed(sources[source], `source as one of ${Object.keys(sources).join(', ')}`)()
}

/** Rise of nitrate N between the first and the last reading over all N put in meanwhile. */
function seenAsRise(file: CaseFile, span: { readonly from: string; readonly to: string }): number {
  const readings = readingsOf(file, 'nitrate', span.from, span.to)
  const first = readings[0]
  const last = readings.at(-1)
  if (first === undefined || last === undefined || daysBetween(first.date, last.date) === 0)
    throw new CannotAnswer('needs readings of nitrate on two days')
  const rise_mg = ((usualValue(last) - usualValue(first)) / perN) * waterVolume(file)
  const perDay = total(inputSums(file, 'N', first.date, last.date))
  if (perDay === 0) throw new CannotAnswer('needs an input of N')
  return rise_mg / (perDay * daysBetween(first.date, last.date))
}

/** A steady catch decays while it waits: the mean over its ages of what is left, (1 - e^(-kT)) / (kT). */
function leftWhenEmptied(question: Question): number {
  const { check, file } = question
  const intervals = file.system.equipment.map(
    ({ changed_every_days, cup_emptied_every_days }) => changed_every_days ?? cup_emptied_every_days,
  )
  const days = needed(
    numberIn(check, 'interval_days') ?? intervals.find((interval) => typeof interval === 'number'),
    'interval_days',
  )
  const given = file.given?.decay_per_day
  const decay =
    numberIn(check, 'decay_per_day') ??
    (typeof given === 'number' ? given : fact('min.detritus.k_fast').typical * fact('min.n_over_c').typical)
  const spent = decay * days
  return spent === 0 ? 1 : (1 - Math.exp(-spent)) / spent
}
