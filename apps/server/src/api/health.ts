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
        workspace: z.string().describe('The workspace that entries of this log name.'),
        kept: z.string().describe('Where the log lives, in words that follow "Your log is kept".'),
      }),
    },
  },
  answer: (_, { start, logbook, kept }) => ({
    status: 200,
    body: { ...running, start, workspace: logbook.workspace, kept },
  }),
})
