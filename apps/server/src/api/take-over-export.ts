import { readExport, takeOverExport as takeOver } from '@holdfast/logbook/export'
import { z } from 'zod'
import { route } from './route.ts'
import { refusal } from './schemas.ts'

/** An export with its pictures; what is larger goes in by the command line. */
const most = 250 * 1024 * 1024

export const takeOverExport = route({
  name: 'takeOverExport',
  method: 'post',
  at: '/api/export',
  says: 'Takes over what an export holds, in any of its forms: what is here already stays, and nothing is doubled.',
  brings: { says: 'The bytes of the file.', most },
  answers: {
    200: {
      says: 'On the disk.',
      schema: z.object({
        madeAt: z.iso.datetime().describe('When the export was made.'),
        systems: z.array(z.string()).readonly().describe('Ids of the systems in it.'),
        added: z.int().describe('Entries that were new here.'),
        already: z.int().describe('Entries that were here before.'),
        differing: z
          .array(z.string())
          .readonly()
          .describe('Of those, what says something else here; it stays.'),
        leftOut: z.array(z.string()).readonly().describe('Sums of files lost before the export was made.'),
      }),
    },
    422: { says: 'It is no whole export. Nothing was stored.', schema: refusal },
  },
  async answer({ body }, { logbook }) {
    const read = readExport(body instanceof Uint8Array ? body : new Uint8Array())
    if (!read.ok) return { status: 422, body: { issues: [...read.issues] } }
    const { head, entries } = read.contents
    const { added, already, differing, leftOut } = await takeOver(logbook, read.contents)
    const systems = [...new Set(entries.map(({ system }) => system))].sort()
    const counts = { added: added.length, already: already.length }
    return { status: 200, body: { madeAt: head.madeAt, systems, ...counts, differing, leftOut } }
  },
})
