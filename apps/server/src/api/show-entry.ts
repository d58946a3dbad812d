import { lineOf } from '@holdfast/logbook'
import { z } from 'zod'
import { route } from './route.ts'
import { line, refusal } from './schemas.ts'

export const showEntry = route({
  name: 'showEntry',
  method: 'get',
  at: '/api/entries/{id}',
  says: 'One entry with what became of it.',
  path: z.object({ id: z.uuid().describe('Id of an entry, a UUID.') }),
  answers: {
    200: { says: 'Its line of the journal.', schema: line },
    404: { says: 'There is no such entry, or it only takes another back.', schema: refusal },
  },
  async answer({ path }, { logbook }) {
    const found = await lineOf(logbook, path.id)
    if (found !== undefined) return { status: 200, body: found }
    const issue = {
      code: 'no-entry',
      where: 'Entry',
      got: `${path.id} is not in this log`,
      accepted: 'The id of an entry, as the journal gives it.',
      next: '',
    }
    return { status: 404, body: { issues: [issue] } }
  },
})
