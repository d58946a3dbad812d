import { describedOn, systemDescription } from '@holdfast/logbook'
import { z } from 'zod'
import { noSystem } from './refusals.ts'
import { route } from './route.ts'
import { refusal } from './schemas.ts'

export const describeSystem = route({
  name: 'describeSystem',
  method: 'get',
  at: '/api/systems/{system}/description',
  says: 'The description of a system on a day, without its log; before the first one, the first.',
  path: z.object({ system: z.string().describe('Id of the system.') }),
  query: z.object({ day: z.iso.date().describe('The day, such as 2026-03-01.') }),
  answers: {
    200: {
      says: 'What an entry of that day is read with.',
      schema: z.object({
        workspace: z.string().describe('The workspace that entries of this log name.'),
        system: systemDescription,
        kept: z.string().describe('Where the log lives, in words that follow "Your log is kept".'),
      }),
    },
    404: { says: 'There is no such system.', schema: refusal },
  },
  async answer({ path, query }, { logbook, kept }) {
    const system = await describedOn(logbook, path.system, query.day)
    if (system === undefined) return { status: 404, body: { issues: [noSystem(path.system)] } }
    return { status: 200, body: { workspace: logbook.workspace, system, kept } }
  },
})
