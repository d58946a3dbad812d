import { z } from 'zod'
import { noSystem } from './refusals.ts'
import { route } from './route.ts'
import { refusal, storedEntry } from './schemas.ts'

export const listReceived = route({
  name: 'listReceived',
  method: 'get',
  at: '/api/systems/{system}/received',
  says: 'Every entry of a system in the order of receipt, those among them that take others back: for a program that works out by itself what holds.',
  path: z.object({ system: z.string().describe('Id of the system.') }),
  answers: {
    200: {
      says: 'At the newest version of their kinds.',
      schema: z.object({ entries: z.array(storedEntry).readonly() }),
    },
    404: { says: 'There is no such system.', schema: refusal },
  },
  async answer({ path: { system } }, { logbook }) {
    const entries = await logbook.read({ system })
    if (entries.length === 0) return { status: 404, body: { issues: [noSystem(system)] } }
    return { status: 200, body: { entries } }
  },
})
