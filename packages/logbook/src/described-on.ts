import type { System } from '@holdfast/ecosystem'

import { systemAt } from './entries/system-at.ts'
import type { Logbook } from './logbook.ts'

/** After every time that an entry can carry. */
const always = '9999-12-31'

/**
 * The description of a system on a day, without the rest of its log; before the first one, the first.
 *
 * @param day  ISO date in the system's zone
 * @returns undefined where the log does not describe the system
 */
export async function describedOn(
  logbook: Pick<Logbook, 'read'>,
  system: string,
  day: string,
): Promise<System | undefined> {
  const stored = await logbook.read({ system, kinds: ['system', 'retraction'] })
  const first = stored
    .filter(({ kind }) => kind === 'system')
    .map(({ at }) => at.slice(0, 10))
    .sort()
  for (const on of [day, ...first]) {
    const described = systemAt(stored, on, always)
    if (described !== undefined) return described
  }
  return undefined
}
