import { acceptedPlan, type CrewAnswer, type Wishes } from '@holdfast/crew-plan'
import { composeEntry, momentAt, type SystemLog } from '@holdfast/logbook'
import { type Where, withLog } from './open-log.ts'
import { writer } from './writer.ts'

type Plan = Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }>

/** Keeps a plan in the log. @returns the id of the entry */
export const acceptCrew = (
  { system, asOf }: SystemLog,
  plan: Plan,
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
        body: acceptedPlan(plan, wishes, asOf),
      },
      now,
    )
    await logbook.append([entry])
    return entry.id
  })
