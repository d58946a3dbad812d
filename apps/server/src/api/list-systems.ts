import { systemLog } from '@holdfast/logbook'
import { z } from 'zod'
import { route } from './route.ts'

export const listSystems = route({
  name: 'listSystems',
  method: 'get',
  at: '/api/systems',
  says: 'The systems of this log that are described.',
  answers: {
    200: {
      says: 'In the order of their ids.',
      schema: z.array(z.object({ id: z.string(), name: z.string() })),
    },
  },
  async answer(_, { logbook }) {
    const ids = await logbook.systems()
    const names = await Promise.all(
      ids.map(async (id) => {
        const log = systemLog(await logbook.read({ system: id, kinds: ['system', 'retraction'] }))
        return log === undefined ? [] : [{ id, name: log.system.name }]
      }),
    )
    return { status: 200, body: names.flat() }
  },
})
