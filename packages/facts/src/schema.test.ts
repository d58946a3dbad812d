import { readdirSync, readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import schema from '../schema/catalogue.schema.json' with { type: 'json' }

const folder = new URL('./data/', import.meta.url)

/** Files that are not lists of facts, and the definition of the schema they answer to. */
const definitions: Readonly<Record<string, string>> = {
  'sources.json': 'sources',
  'algae.json': 'algaeKinds',
  'grazers.json': 'grazers',
  'consumption-rules.json': 'consumptionRules',
  'tastes.json': 'tastes',
  'mouths.json': 'mouths',
  'surfaces.json': 'surfaceKinds',
  'feeds.json': 'feedKinds',
  'coral-bands.json': 'coralBands',
  'neighbours.json': 'neighbours',
  'pair-rules.json': 'pairRules',
  'crew-pools.json': 'crewPools',
  'crew-conditions.json': 'crewConditions',
  'crew-kinds.json': 'crewKinds',
  'traits.json': 'traits',
  'trait-chances.json': 'traitChances',
  'complaints.json': 'complaints',
  'look-alikes.json': 'lookAlikes',
  'responses.json': 'responses',
  'finer-kinds.json': 'finerKinds',
  'cautions.json': 'cautions',
  'measures.json': 'measures',
  'controls.json': 'controls',
}

const ajv = new Ajv({ allErrors: true, allowUnionTypes: true, strict: true }).addSchema(schema, 'catalogue')

function complaints(definition: string, data: unknown): readonly string[] {
  const validate = ajv.compile({ $ref: `catalogue#/$defs/${definition}` })
  validate(data)
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message}`)
}

describe('the data files', () => {
  test.each(readdirSync(folder))('%s keeps to the schema', (file) => {
    const data: unknown = JSON.parse(readFileSync(new URL(file, folder), 'utf8'))
    expect(complaints(definitions[file] ?? 'facts', data)).toEqual([])
  })
})

describe('the schema', () => {
  const good = {
    id: 'foam.k.tank',
    title: 'A rate',
    unit: 'd⁻¹',
    low: 1,
    typical: 2,
    high: 3,
    source: 'somebody-1999',
    provenance: 'read',
    holds: 'a tank',
  }

  test('takes a fact with all its fields', () => {
    expect(complaints('fact', good)).toEqual([])
  })

  test.each(Object.keys(good))('refuses a fact without %s', (field) => {
    const { [field]: _, ...rest } = good as Record<string, unknown>
    expect(complaints('fact', rest)).toEqual([` must have required property '${field}'`])
  })

  test.each([
    ['a provenance that is no word of ours', { provenance: 'guess' }],
    ['an id with a space', { id: 'foam k.tank' }],
    ['an id of one word', { id: 'foam' }],
    ['a field nobody knows', { colour: 'red' }],
    ['a number written as text', { low: '1' }],
  ])('refuses %s', (_, change) => {
    expect(complaints('fact', { ...good, ...change })).not.toEqual([])
  })
})
