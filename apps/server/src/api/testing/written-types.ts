import openapiTypescript, { astToString, type OpenAPI3 } from 'openapi-typescript'
import ts from 'typescript'

/** Schemas whose types other packages have already, by name, and the package. */
const known = new Map([
  ['Event', 'ecosystem'],
  ['Observation', 'ecosystem'],
  ['System', 'ecosystem'],
  ['Entry', 'logbook'],
  ['EntryKind', 'logbook'],
  ['Issue', 'logbook'],
  ['JournalLine', 'logbook'],
  ['Sent', 'logbook'],
  ['Stored', 'logbook'],
])

/** The types of the document for the client, as text. */
export async function writtenTypes(document: OpenAPI3): Promise<string> {
  const tree = await openapiTypescript(structuredClone(document), {
    immutable: true,
    alphabetize: true,
    transform: (_, { path }) => {
      const name = /^#\/components\/schemas\/(\w+)$/.exec(path ?? '')?.[1] ?? ''
      return known.has(name) ? ts.factory.createTypeReferenceNode(name) : undefined
    },
  })
  const imports = ['ecosystem', 'logbook'].map((from) => {
    const names = [...known.keys()].filter((name) => known.get(name) === from)
    return `import type { ${names.join(', ')} } from '@holdfast/${from}'`
  })
  return [
    '// Made from the document of the API by apps/server/src/api/document.test.ts, which holds the two equal.',
    ...imports,
    '',
    astToString(tree),
  ].join('\n')
}
