import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import awaiting from './awaiting-reader.json' with { type: 'json' }
import { facts, feedKinds, grazers, mouths, surfaceKinds } from './index.ts'

const root = new URL('../../../', import.meta.url)
const sources = ['packages', 'apps']
  .flatMap((folder) =>
    readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' }).map(
      (file) => `${folder}/${file}`,
    ),
  )
  .filter((file) => /^(packages|apps)\/(?!facts\/)[\w-]+\/src\/.*(?<!\.test)\.tsx?$/.test(file))
  .map((file) => readFileSync(new URL(file, root), 'utf8'))
  .join('\n')

const escaped = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** Ids written out in the sources, and templates such as `algae.${kind}.growth` as patterns. */
const literals = new Set([...sources.matchAll(/['"]([a-z]\w*(?:\.\w+)+)['"]/g)].map((match) => match[1]))
const templates = [...sources.matchAll(/`([a-z]\w*(?:[.\w]|\$\{[^}`]*\})*)`/g)]
  .map((match) => match[1])
  .filter((text) => text.includes('${') && text.includes('.'))
  .map((text) => new RegExp(`^${text.replaceAll('.', '\\.').replaceAll(/\$\{[^}]*\}/g, '(\\w+)')}$`))

/** A field of a table is read where it is named; a quoted N or P may be an atom, so single letters need the dot. */
const named = (field: string) =>
  new RegExp(`\\.${field}\\b`).test(sources) || (field.length > 1 && sources.includes(`'${field}'`))

/** Endings of ids that grazers carry in the table. */
const appetites: ReadonlySet<string> = new Set(grazers().map(({ appetite }) => appetite))

/** A template reads an id whose variable ends, such as growth in `algae.${kind}.${name}`, stand in the sources. */
function byTemplate(id: string): boolean {
  const last = id.slice(id.lastIndexOf('.') + 1)
  return templates.some(
    (template) =>
      template.test(id) &&
      (sources.includes(`'${last}'`) || sources.includes(`.${last}\``) || appetites.has(last)),
  )
}

/** Ids that are read through a table of the catalogue: its look-up is called and the field named. */
const through = (lookUp: RegExp, rows: readonly object[]): readonly string[] =>
  lookUp.test(sources)
    ? rows.flatMap((row) =>
        Object.entries(row).flatMap(([field, value]) =>
          typeof value === 'string' && named(field) ? [value] : [],
        ),
      )
    : []
const indirect = new Set([
  ...through(/\bfeedKinds?\(/, feedKinds()),
  ...through(/\bmouths?\(/, mouths()),
  ...through(/\bsurfaceKinds?\(/, surfaceKinds()),
  ...(/\bconsumptionId\(/.test(sources)
    ? facts().flatMap(({ id }) => (id.startsWith('grazer.') ? [id] : []))
    : []),
  ...(/\bpredationId\(/.test(sources)
    ? facts().flatMap(({ id }) => (id.startsWith('neighbour.') ? [id] : []))
    : []),
])

const waits = awaiting.map((pattern) => new RegExp(`^${pattern.split('*').map(escaped).join('\\w+')}$`))

test('every fact has a reader, or stands in the list of those that wait for one', () => {
  const unread = facts()
    .map(({ id }) => id)
    .filter((id) => !literals.has(id) && !indirect.has(id) && !byTemplate(id))
  expect(unread.filter((id) => !waits.some((pattern) => pattern.test(id)))).toEqual([])
})

test('what waits for a reader is in the catalogue', () => {
  expect(awaiting.filter((_, place) => !facts().some(({ id }) => waits[place].test(id)))).toEqual([])
})
