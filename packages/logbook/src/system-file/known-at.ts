import { z } from '../entries/schema.ts'
import { systemFileJsonSchema } from './document.ts'

const alternative = z.looseObject({ properties: z.record(z.string(), z.unknown()) })
const node = z.looseObject({
  properties: z._default(z.record(z.string(), z.unknown()), {}),
  items: z.optional(z.unknown()),
  oneOf: z._default(z.array(alternative), []),
})
const kindOf = z.looseObject({ const: z.optional(z.string()), enum: z._default(z.array(z.string()), []) })

/**
 * The keys that the schema knows at a place of a document, or the kinds where the place is a kind. Read
 * from the JSON Schema, which is plain data, so that there is one list of keys.
 */
export function knownAt(path: readonly PropertyKey[], document: unknown): readonly string[] {
  let schema: unknown = systemFileJsonSchema()
  let typed = document
  for (const key of path) {
    const { properties, items, oneOf } = node.parse(schema)
    if (key === 'kind' && oneOf.length > 0) return oneOf.flatMap((one) => kindsOf(one.properties.kind))
    typed = typeof typed === 'object' && typed !== null ? Reflect.get(typed, key) : undefined
    schema = typeof key === 'number' ? items : properties[String(key)]
    schema = chosen(schema, typed)
  }
  return Object.keys(node.parse(schema).properties).filter((key) => key !== '$schema')
}

/** Of several alternatives the one of the kind that was typed; the schema itself where it has none. */
function chosen(schema: unknown, typed: unknown): unknown {
  const { oneOf } = node.parse(schema)
  const kind: unknown = typeof typed === 'object' && typed !== null ? Reflect.get(typed, 'kind') : undefined
  return oneOf.find((one) => kindsOf(one.properties.kind).some((known) => known === kind)) ?? schema
}

function kindsOf(schema: unknown): readonly string[] {
  const { const: only, enum: several } = kindOf.parse(schema)
  return only === undefined ? several : [only]
}
