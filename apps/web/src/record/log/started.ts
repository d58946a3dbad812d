import { forget, keep, kept } from '../../shell/browser-store.ts'
import type { Texts } from './own-texts.ts'
import type { When } from './when.ts'

/** What stands in a form. */
export interface Filled {
  readonly typed: Texts
  /** Units chosen beside figures, by the names of their blanks. */
  readonly units: Texts
  readonly when: When
}

/** What was begun under a name and not logged yet; it outlives a reload. */
export function started(name: string): Filled | undefined {
  const found = kept(name)
  const isOne =
    typeof found === 'object' && found !== null && ['typed', 'units', 'when'].every((key) => key in found)
  return isOne ? (found as Filled) : undefined
}

export const keepStarted = (name: string, filled: Filled): boolean => keep(name, filled)
export const forgetStarted = (name: string): void => forget(name)

/** The name of what is begun, for a kind of a system or for the correction of an entry. */
export const nameOfStart = (system: string, of: string): string => `holdfast.started.${system}.${of}`
