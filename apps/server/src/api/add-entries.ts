import { type Entry, type Issue, readEntry, type Sent } from '@holdfast/logbook'
import { z } from 'zod'
import { route } from './route.ts'
import { refusal, sentEntry } from './schemas.ts'

const ids = z.array(z.uuid()).readonly()

export const addEntries = route({
  name: 'addEntries',
  method: 'post',
  at: '/api/entries',
  says: 'Stores entries, all of them or none. An id is stored once, however often it is sent; order and time of receipt are the server’s.',
  brings: {
    says: 'Entries of this workspace, of every version ever released.',
    schema: z.object({ entries: z.array(sentEntry) }),
    most: 8 * 1024 * 1024,
  },
  answers: {
    200: {
      says: 'On the disk.',
      schema: z.object({
        added: ids.describe('Stored now.'),
        already: ids.describe('Stored before; what is stored stays.'),
        differing: ids.describe('Those of `already` whose content differs from what is stored.'),
      }),
    },
    422: { says: 'Nothing was stored; every issue of every entry.', schema: refusal },
  },
  async answer({ body }, { logbook }) {
    const list = outer.safeParse(body)
    if (!list.success) return { status: 422, body: { issues: [noList] } }
    const { entries } = list.data
    const reads = entries.map((sent) => readEntry(sent))
    const understood = reads.flatMap((read) => (read.ok ? [read.entry] : []))
    // A description may come with the first entries of its system.
    const described = understood.flatMap(({ kind, system }) => (kind === 'system' ? [system] : []))
    const known = new Set([...(await logbook.systems()), ...described])
    const issues = reads.flatMap((read, at) =>
      (read.ok ? misplaced(read.entry, logbook.workspace, known) : read.issues).map((issue) => ({
        ...issue,
        where: placeOf(issue.where, at, entries.length),
      })),
    )
    if (issues.length > 0) return { status: 422, body: { issues } }
    // As they were sent: what this version does not know is kept, and old versions are lifted when read.
    const { added, already, differing } = await logbook.append(entries as readonly Sent[])
    return { status: 200, body: { added, already, differing } }
  },
})

const outer = z.object({ entries: z.array(z.unknown()) })

const noList: Issue = {
  code: 'no-list',
  where: 'entries',
  got: 'it is no list',
  accepted: 'An object with "entries", a list of entries.',
  next: 'Nothing was stored.',
}

/** Which entry of a sending it is, and what of it; of a single one there is no need to say which. */
const placeOf = (where: string, at: number, count: number): string =>
  count === 1 ? where : `Entry ${at + 1}${where.replace(/^entry\b/, '').replace(/^(?=\w)/, ': ')}`

/** What is wrong with where an entry belongs. */
function misplaced({ workspace, system }: Entry, ours: string, known: ReadonlySet<string>): Issue[] {
  const next = 'Nothing was stored.'
  return [
    ...(workspace === ours
      ? []
      : [
          {
            code: 'other-workspace',
            where: 'workspace',
            got: `"${workspace}" is not that of this log`,
            accepted: `"${ours}".`,
            next,
          },
        ]),
    ...(known.has(system)
      ? []
      : [
          {
            code: 'no-system',
            where: 'system',
            got: `"${system}" is not in this log`,
            accepted: `${[...known].join(', ') || 'There is none yet: send its description first'}.`,
            next,
          },
        ]),
  ]
}
