import { type FinerKinds, finerKindsOf, leastChance, trait } from '@holdfast/facts'
import type { Key } from './key.ts'

/** The key of the genera within a kind, or undefined where they are met in the same way. */
export function finerKey(kind: string): Key | undefined {
  const finer = finerKindsOf(kind)
  return finer === undefined ? undefined : keyOf(finer)
}

function keyOf({ kinds, traits, shared, chances, responses }: FinerKinds): Key {
  const frequencies = new Map(kinds.map(({ key, frequency }) => [key, frequency]))
  return {
    kinds: kinds.map(({ key, title }) => ({ key, title })),
    traits: [...traits, ...shared.map(trait)],
    chance: (one, asked, state) => chances[one]?.[asked]?.[state] ?? leastChance,
    frequency: (one) => frequencies.get(one) ?? 0,
    inFrequency: [],
    responses,
    lookAlikes: [],
    // What has come so far in the key is slime.
    slime: kinds.map(({ key }) => key),
  }
}
