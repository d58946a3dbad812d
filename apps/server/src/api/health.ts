import { z } from 'zod'
import { route } from './route.ts'

const running = { program: 'holdfast', status: 'ok' } as const

export const health = route({
  name: 'health',
  method: 'get',
  at: '/api/health',
  says: 'Whether Holdfast runs here, and which start of it.',
  answers: {
    200: {
      says: 'It runs.',
      schema: z.object({
        program: z.literal('holdfast'),
        status: z.literal('ok'),
        start: z.string().describe('A name of this start.'),
      }),
    },
  },
  answer: (_, { start }) => ({ status: 200, body: { ...running, start } }),
})
