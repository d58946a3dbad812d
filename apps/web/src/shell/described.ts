import { forget, keep, kept } from './browser-store.ts'
import type { SystemData } from './system-data.ts'

/** What logging needs of a system. */
export type Described = Pick<SystemData, 'workspace' | 'system' | 'kept'>

const nameOf = (id: string) => `holdfast.described.${id}`
const lastShown = 'holdfast.described'

/**
 * The system as this browser saw it last, so that an entry can be written before the server has
 * answered, and where it does not.
 *
 * @param id  of the system; left out: the one shown last
 */
export function describedBefore(id?: string): Described | undefined {
  const of = id ?? kept(lastShown)
  const found = typeof of === 'string' ? kept(nameOf(of)) : undefined
  return isDescribed(found) ? found : undefined
}

export function keepDescribed({ workspace, system, kept }: Described): void {
  keep(nameOf(system.id), { workspace, system, kept })
  keep(lastShown, system.id)
}

/** A system that was put away is not shown from memory. */
export function forgetDescribed(id: string): void {
  forget(nameOf(id))
  if (kept(lastShown) === id) forget(lastShown)
}

/** It was written by this page, perhaps by an older one. */
function isDescribed(value: unknown): value is Described {
  return (
    typeof value === 'object' &&
    value !== null &&
    ['workspace', 'kept'].every((key) => typeof Reflect.get(value, key) === 'string') &&
    'system' in value &&
    typeof value.system === 'object' &&
    value.system !== null &&
    ['id', 'name', 'timeZone'].every((key) => typeof Reflect.get(value.system as object, key) === 'string')
  )
}
