import { envelope } from '../entries/entry.ts'
import { kinds } from '../entries/index.ts'
import { z } from '../entries/schema.ts'

/** The version of the form that this program writes; it reads this one and older. */
export const exportVersion = 1

/** An entry of any version as it was sent, with the time at which the store received it. */
export const keptEntry = z.looseObject({ ...envelope.shape, knownAt: z.iso.datetime() })

export const exportHead = z.object({
  format: z.literal('holdfast-export'),
  version: z.literal(exportVersion),
  workspace: z.string(),
  madeAt: z.iso.datetime(),
  leftOut: z.array(z.string()),
})

/** A file kept beside the entries, with its bytes. */
export const exportedAttachment = z.object({
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  type: z.string(),
  size: z.int().check(z.minimum(0)),
  base64: z.string(),
})

/** The whole export as one JSON document. */
export const exportDocument = z.object({
  ...exportHead.shape,
  entries: z.array(keptEntry),
  attachments: z.array(exportedAttachment),
})

export type ExportDocument = z.infer<typeof exportDocument>

/**
 * The JSON Schema of an export (draft 2020-12): the envelope of every entry, and the body of each kind
 * at its newest version. Bodies of older versions are not described; the program reads them all.
 */
export function exportJsonSchema(): Record<string, unknown> & { readonly $schema: string } {
  const schema = z.toJSONSchema(z.object({ ...exportDocument.shape, entries: z.array(z.unknown()) }))
  const entry = {
    ...withoutDraft(z.toJSONSchema(keptEntry)),
    allOf: kinds.map(({ name, v, body }) => ({
      if: { properties: { kind: { const: name }, v: { const: v } } },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { properties: { body: withoutDraft(z.toJSONSchema(body)) } },
    })),
  }
  return {
    ...schema,
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Export of a Holdfast log',
    properties: { ...schema.properties, entries: { type: 'array', items: entry } },
  }
}

const withoutDraft = ({ $schema: _, ...schema }: Record<string, unknown>): Record<string, unknown> => schema
