import { journalPage, Refused } from '@holdfast/logbook'
import { z } from 'zod'
import { noSystem } from './refusals.ts'
import { route } from './route.ts'
import { entryKind, line, refusal } from './schemas.ts'

const date = (words: string) => z.iso.date().exactOptional().describe(`${words}, such as 2026-03-01.`)

/** The most lines of one answer, and how many there are where none are asked for. */
const [most, usual] = [1000, 100]

export const listEntries = route({
  name: 'listEntries',
  method: 'get',
  at: '/api/systems/{system}/entries',
  says: 'The journal of a system: every entry with what became of it, the latest day first and of one day the latest received.',
  path: z.object({ system: z.string().describe('Id of the system.') }),
  query: z.object({
    kind: entryKind.exactOptional().describe(`One kind only: ${entryKind.options.join(', ')}.`),
    from: date('The first day'),
    to: date('The last day'),
    words: z
      .string()
      .max(500)
      .exactOptional()
      .describe(
        'Only entries that hold each of these words, anywhere in what they say or in what was typed.',
      ),
    before: z.string().max(100).exactOptional().describe('The `next` of the answer before.'),
    limit: z.coerce
      .number<string>()
      .int()
      .min(1)
      .max(most)
      .default(usual)
      .describe(`How many at most, 1 to ${most}.`),
  }),
  answers: {
    200: {
      says: 'Lines of the journal; `next` is there where more follow.',
      schema: z.object({ lines: z.array(line).readonly(), next: z.string().exactOptional() }),
    },
    404: { says: 'There is no such system, or no such page.', schema: refusal },
  },
  async answer({ path, query }, { logbook, search }) {
    const { system } = path
    try {
      const page = await journalPage(logbook, { system, ...query }, search)
      if (page.lines.length > 0 || (await logbook.systems()).includes(system))
        return { status: 200, body: page }
      return { status: 404, body: { issues: [noSystem(system)] } }
    } catch (error) {
      if (!(error instanceof Refused) || error.issues[0]?.code !== 'not-a-page') throw error
      return { status: 404, body: { issues: [...error.issues] } }
    }
  },
})
