import { convert, UnitError } from '@holdfast/quantities'
import { fact } from './catalogue.ts'
import type { Fact, Range } from './fact.ts'
import {
  catalogueAnimals,
  type KnownAnimals,
  type OwnAnimal,
  ownAnimalRemark,
  withOwnAnimals,
} from './own-animal.ts'
import { UnknownKey } from './unknown-key.ts'

/** The keeper's own numbers of a fact, for one system, in a unit that measures the same. */
export interface OwnFact extends Range {
  /** Id in the catalogue. */
  readonly fact: string
  readonly unit: string
  readonly reason: string
  readonly source?: string
}

/** The catalogue as it holds for one system. */
export interface FactsOfSystem extends KnownAnimals {
  /** As `fact`, with the keeper's own numbers where there are some, in the catalogue's unit. */
  readonly fact: (id: string) => Fact
  /** The typical value of a fact, in the catalogue's unit. */
  readonly typical: (id: string) => number
  /** The keeper's own, by id: those that are used. */
  readonly own: ReadonlyMap<string, OwnFact>
  /** A sentence for each that cannot be used. */
  readonly remarks: readonly string[]
}

/** The catalogue with nothing of the keeper's own. */
export const catalogueAlone: FactsOfSystem = {
  ...catalogueAnimals,
  fact,
  typical: (id) => fact(id).typical,
  own: new Map(),
  remarks: [],
}

/**
 * Puts the keeper's own numbers in the place of the catalogue's, and the keeper's own animals beside its animals.
 * Title, conditions and what kind of number it is stay the catalogue's. What cannot be used is left out and said.
 */
export function factsOfSystem(
  given: readonly OwnFact[],
  ownAnimals: readonly OwnAnimal[] = [],
): FactsOfSystem {
  const { facts, issues, ...animals } = withOwnAnimals(ownAnimals)
  const own = new Map<string, OwnFact>()
  const replaced = new Map(facts)
  const remarks = issues.map(ownAnimalRemark)
  for (const one of given) {
    const found = replacement(one)
    if (typeof found === 'string') remarks.push(found)
    else {
      own.set(one.fact, one)
      replaced.set(one.fact, found)
    }
  }
  const here = (id: string): Fact => replaced.get(id) ?? fact(id)
  return { ...animals, fact: here, typical: (id) => here(id).typical, own, remarks }
}

/** The fact with the keeper's numbers, or a sentence that says why not. */
function replacement(one: OwnFact): Fact | string {
  const notUsed = `Your own value of ${one.fact} is not used:`
  const entry = known(one.fact)
  if (entry instanceof UnknownKey)
    return `${notUsed} the catalogue has no such fact. The nearest are ${entry.issue.accepted.join(', ')}.`
  if (entry.retired)
    return `${notUsed} the fact is retired${entry.see === undefined ? '' : `, see ${entry.see}`}.`
  const inItsUnit = (value: number): number => convert(value, one.unit, entry.unit)
  try {
    const [low, typical, high] = [inItsUnit(one.low), inItsUnit(one.typical), inItsUnit(one.high)]
    if (!(low <= typical && typical <= high)) return `${notUsed} low, typical and high do not rise.`
    if (low < 0 && entry.signed !== true) return `${notUsed} the fact cannot be below 0.`
    return { ...entry, low, typical, high }
  } catch (error) {
    if (!(error instanceof UnitError)) throw error
    return `${notUsed} it is given in ${one.unit}, and the fact is in ${entry.unit}.`
  }
}

function known(id: string): Fact | UnknownKey {
  try {
    return fact(id)
  } catch (error) {
    if (error instanceof UnknownKey) return error
    throw error
  }
}
