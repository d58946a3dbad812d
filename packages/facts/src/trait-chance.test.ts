import { describe, expect, test } from 'vitest'
import {
  algaeKind,
  cautions,
  complaintShare,
  finerKinds,
  kindsOfKey,
  leastChance,
  lookAlikes,
  responses,
  trait,
  traitChance,
  traitChances,
  traits,
} from './index.ts'

const sumOver = (states: readonly { readonly key: string }[], chance: (state: string) => number) =>
  states.reduce((sum, { key }) => sum + chance(key), 0)

describe('the chances of traits', () => {
  test.each(kindsOfKey())('the states of each trait of %s share out a hundred keepers', (kind) => {
    for (const { key, states } of traits()) {
      expect(Object.keys(traitChances(kind, key)?.chances ?? {}).length, key).toBeGreaterThan(0)
      expect(
        sumOver(states, (state) => traitChance(kind, key, state)),
        key,
      ).toBeCloseTo(1, 2)
    }
  })

  test.each(kindsOfKey())('%s names no state that its trait has not', (kind) => {
    for (const { key, states } of traits())
      expect(states.map((state) => state.key)).toEqual(
        expect.arrayContaining(Object.keys(traitChances(kind, key)?.chances ?? {})),
      )
  })

  test('the kinds are those of algae, and what is no alga', () => {
    for (const kind of kindsOfKey().filter((key) => key !== 'not_algae'))
      expect(algaeKind(kind).key).toBe(kind)
    expect(kindsOfKey()).toHaveLength(16)
  })

  test('what was not described has the least chance, not none', () => {
    expect(traitChance('coralline', 'texture', 'slimy')).toBe(leastChance)
  })
})

describe('complaints', () => {
  test.each(trait('age_of_system').states.map(({ key }) => key))('share out those of systems %s', (age) => {
    expect(kindsOfKey().reduce((sum, kind) => sum + complaintShare(kind, age), 0)).toBeCloseTo(1, 2)
  })

  test('diatoms rule the first two months and red turf the years after', () => {
    expect(complaintShare('film_diatom', 'under_2_months')).toBeGreaterThan(0.3)
    expect(complaintShare('red_turf', 'over_18_months')).toBeGreaterThan(
      complaintShare('red_turf', 'under_2_months'),
    )
  })
})

test('every kind has one response, and no response a kind that is not in the key', () => {
  expect(
    responses()
      .flatMap(({ kinds }) => kinds)
      .sort(),
  ).toEqual([...kindsOfKey()].sort())
})

test('a response costs something only instead of one that there is', () => {
  const keys = responses().map(({ key }) => key)
  for (const { costsInsteadOf } of responses())
    expect(keys).toEqual(expect.arrayContaining(Object.keys(costsInsteadOf ?? {})))
})

test('the cautions of every response are in the list', () => {
  const all = [...responses(), ...finerKinds().flatMap((finer) => finer.responses)]
  for (const { cautions: named = [] } of all)
    expect(cautions().map(({ key }) => key)).toEqual(expect.arrayContaining([...named]))
})

test('look-alikes are two kinds of the key, parted by a trait of the list', () => {
  for (const { pair, traits: by } of lookAlikes()) {
    expect(kindsOfKey()).toEqual(expect.arrayContaining([...pair]))
    expect(by.map((key) => trait(key).key)).toEqual(by)
  }
})

describe('finer kinds', () => {
  test.each(finerKinds())(
    'of $parent have chances for each of their traits, and one response each',
    (finer) => {
      const asked = [...finer.traits, ...finer.shared.map(trait)]
      for (const { key: kind } of finer.kinds)
        for (const { key, states } of asked)
          expect(
            sumOver(states, (state) => finer.chances[kind]?.[key]?.[state] ?? leastChance),
            `${kind} ${key}`,
          ).toBeCloseTo(1, 2)
      expect(finer.responses.flatMap(({ kinds }) => kinds).sort()).toEqual(
        finer.kinds.map(({ key }) => key).sort(),
      )
    },
  )
})
