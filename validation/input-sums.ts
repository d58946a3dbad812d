/**
 * What was put into a system, worked out in closed form from its husbandry: grams fed times composition,
 * litres poured times concentration, grams dosed times formula. Source: mass balance. The model's ledger
 * must come to the same, and a test holds them side by side.
 */
import { molarMass } from '@holdfast/quantities'
import { compoundNamed, massFraction } from '@holdfast/seawater'
import { CannotAnswer } from './answers/answer.ts'
import { daysBetween } from './calendar.ts'
import type { CaseFile } from './case-file.ts'
import {
  atomInRation,
  datesBetween,
  evaporation_L,
  eventsOf,
  poured,
  rations,
  topOff,
  waterChanges,
} from './husbandry.ts'
import type { Atom } from './model-answers.ts'

export interface InputSums {
  readonly feed: number
  readonly source_water: number
  readonly salt: number
  readonly dose: number
}

/** mg of the atom a day, mean of the span. */
export function inputSums(file: CaseFile, atom: Atom, from: string, to: string): InputSums {
  const days = daysBetween(from, to)
  if (days <= 0) throw new CannotAnswer('a span of at least a day')
  const feed = 1000 * sum(rations(file, from, to)) * atomInRation(file, atom)
  const water = pouredIn(file, atom, from, to)
  return {
    feed: feed / days,
    source_water: water.source / days,
    salt: water.salt / days,
    dose: dosed(file, atom, from, to) / days,
  }
}

export function total(sums: InputSums): number {
  return sum(Object.values(sums))
}

/** mg of the atom that came with water, apart what the salt brought. */
function pouredIn(file: CaseFile, atom: Atom, from: string, to: string) {
  const key = atom === 'N' ? 'NO3_mg_L' : 'PO4_mg_L'
  const perIon = atom === 'N' ? molarMass('N') / molarMass('NO3') : molarMass('P') / molarMass('PO4')
  const saltOnly = poured(file, 'RO/DI + salt')[key]
  const replaced = topOff(file)
  const toppedUp = replaced.byLog
    ? []
    : datesBetween(from, to)
        .filter((date) => !replaced.isEmpty(date))
        .map((date) => ({ volume_L: evaporation_L(file), water: replaced.water(date) }))
  const byHand = eventsOf(file, 'top-off')
    .filter(({ date }) => date >= from && date < to)
    .map((event) => ({
      volume_L: Number(event.volume_L),
      water: poured(file, event.water ?? 'source water'),
    }))
  const all = [...waterChanges(file, from, to), ...toppedUp, ...byHand]
  const ofSalt = (water: { readonly salinity_psu: number }) => (water.salinity_psu > 0 ? saltOnly : 0)
  return {
    source: perIon * sum(all.map(({ volume_L, water }) => volume_L * (water[key] - ofSalt(water)))),
    salt: perIon * sum(all.map(({ volume_L, water }) => volume_L * ofSalt(water))),
  }
}

function dosed(file: CaseFile, atom: Atom, from: string, to: string): number {
  return sum(
    eventsOf(file, 'dose')
      .filter(({ date }) => date >= from && date < to)
      .map((event) => {
        const compound = compoundNamed(String(event.substance))
        if (compound === undefined) throw new CannotAnswer(`the formula of the dose "${event.substance}"`)
        return 1000 * Number(event.mass_g) * massFraction(compound, atom)
      }),
  )
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0)
}
