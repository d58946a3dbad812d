import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import {
  algaeKinds,
  cautions,
  complaintsKnownBy,
  consumptionRules,
  controls,
  facts,
  finerKinds,
  grazers,
  kindsOfKey,
  lookAlikesKnownBy,
  measures,
  neighbours,
  pairRules,
  sources,
  taste,
  traitChances,
  traits,
} from './index.ts'

const tastesOf = (taxon: string) =>
  [...algaeKinds().map(({ key }) => key), 'detritus'].map((kind) => taste(taxon, kind))

const chances = kindsOfKey().flatMap((kind) => traits().map(({ key }) => traitChances(kind, key)))

const named = new Set([
  ...chances.flatMap((one) => (one === undefined ? [] : [one.source])),
  ...[complaintsKnownBy, lookAlikesKnownBy, ...cautions(), ...finerKinds()].map((one) => one.source),
  ...facts().flatMap((one) => [one.source, ...(one.also ?? [])]),
  ...measures().map((one) => one.source),
  ...controls().flatMap(({ rungs }) => rungs.map((one) => one.source)),
  ...algaeKinds().flatMap((kind) => kind.sources),
  ...consumptionRules().flatMap((rule) => rule.sources),
  ...pairRules().map((rule) => rule.source),
  ...neighbours().flatMap(({ threats }) => threats.flatMap((one) => [one.source, ...(one.also ?? [])])),
  ...grazers().flatMap((one) => [
    ...(one.consumptionSources ?? []),
    ...(one.volumeSource === undefined ? [] : [one.volumeSource]),
    ...tastesOf(one.taxon).flatMap((one) => [one.source, ...(one.also ?? [])]),
  ]),
])

test('every source that anything names is in the list', () => {
  const keys = new Set(sources().map(({ key }) => key))
  expect([...named].filter((key) => !keys.has(key))).toEqual([])
})

/** Forms and processes name their papers by the same keys. */
const ecosystem = new URL('../../ecosystem/src/', import.meta.url)
const equations = readdirSync(ecosystem, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(new URL(file, ecosystem), 'utf8'))
  .join('\n')

test('every source in the list is named by something', () => {
  expect(
    sources()
      .map(({ key }) => key)
      .filter((key) => !named.has(key) && !equations.includes(`'${key}'`)),
  ).toEqual([])
})

test('keys of sources are in order and each stands once', () => {
  const keys = sources().map(({ key }) => key)
  expect(keys).toEqual([...new Set(keys)].sort())
})
