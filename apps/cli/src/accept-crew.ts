import type { CrewAnswer, Wishes } from '@holdfast/crew-plan'
import { composeEntry, momentAt, type SystemLog } from '@holdfast/logbook'
import { type Where, withLog } from './open-log.ts'
import { writer } from './writer.ts'

type Plan = Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }>

/** Keeps a plan in the log. @returns the id of the entry */
export const acceptCrew = (
  { system, asOf }: SystemLog,
  { crew, steps, byHand }: Plan,
  wishes: Wishes,
  where: Where,
): Promise<string> =>
  withLog(where, async (logbook) => {
    const now = new Date()
    const entry = composeEntry(
      {
        workspace: logbook.workspace,
        system: system.id,
        kind: 'crew-plan',
        ...writer,
        ...momentAt(now, system.timeZone),
        body: {
          asOf,
          wishes: { ...wishes },
          leave: crew.flatMap(({ taxon, leave }) => (leave > 0 ? [{ taxon, count: leave }] : [])),
          steps: steps.map(({ after_days, animals }) => ({
            after_days,
            animals: animals.map((one) => ({ ...one })),
          })),
          byHand: byHand.map((one) => ({ ...one })),
        },
      },
      now,
    )
    await logbook.append([entry])
    return entry.id
  })
