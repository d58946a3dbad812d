import { systemDescription } from '@holdfast/logbook'
import { z } from 'zod'
import { noSystem } from './refusals.ts'
import { route } from './route.ts'
import { event, observation, outbreak, ownFact, refusal } from './schemas.ts'

const day = z.number().describe('Days of 86,400 s since 1970-01-01T00:00Z.')

export const showSystem = route({
  name: 'showSystem',
  method: 'get',
  at: '/api/systems/{system}',
  says: 'A system with its log as the model takes it.',
  path: z.object({ system: z.string().describe('Id of the system.') }),
  answers: {
    200: {
      says: 'The description that holds on the last day of the log, and what the log says to the model.',
      schema: z.object({
        workspace: z.string().describe('The workspace that entries of this log name.'),
        system: systemDescription,
        observations: z.array(observation).readonly(),
        events: z.array(event).readonly(),
        ownFacts: z.array(ownFact).readonly(),
        outbreaks: z.array(outbreak).readonly(),
        salinity_psu: z.exactOptional(z.number()).describe('Practical salinity as read last, of late.'),
        from: day,
        asOf: day,
        kept: z.string().describe('Where the log lives, in words that follow "Your log is kept".'),
        remarks: z.array(z.string()).readonly(),
      }),
    },
    404: { says: 'There is no such system.', schema: refusal },
  },
  async answer({ path }, { logbook, logs, kept }) {
    const log = await logs.of(path.system)
    if (log === undefined) return { status: 404, body: { issues: [noSystem(path.system)] } }
    const { system, observations, events, ownFacts, outbreaks, salinity_psu, from, asOf, remarks } = log
    const { workspace } = logbook
    const salinity = salinity_psu === undefined ? {} : { salinity_psu }
    const told = { system, observations, events, ownFacts, outbreaks, ...salinity, from, asOf, remarks }
    return { status: 200, body: { workspace, kept, ...told } }
  },
})
