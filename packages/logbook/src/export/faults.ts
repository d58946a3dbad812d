import type { Issue } from '../issue.ts'
import { exportVersion } from './document.ts'

const wholeFile = 'An export as it was written.'

/** A part of the export is not as it was written. */
export function changed(where: string, got: string): Issue {
  const next = 'Export once more, or take the part from another copy. Nothing was stored.'
  return { code: 'changed-export', where, got, accepted: wholeFile, next }
}

/** The end of the export is missing, or a part of it was removed. */
export function cutOff(got: string): Issue {
  const next = 'Export or copy it once more. Nothing was stored.'
  return { code: 'cut-off-export', where: 'Export', got, accepted: wholeFile, next }
}

/** Undefined where this program reads the version. */
export function newer(head: unknown): Issue | undefined {
  const version = typeof head === 'object' && head !== null ? Reflect.get(head, 'version') : undefined
  if (typeof version !== 'number' || version <= exportVersion) return undefined
  return {
    code: 'newer-export',
    where: 'Export',
    got: `it was written by a newer Holdfast (version ${version})`,
    accepted: `This one reads version ${exportVersion} or older.`,
    next: 'Update this Holdfast. Nothing was stored.',
  }
}

/** Of many faults of one sort the first ones are enough to see what happened. */
export function first(issues: readonly Issue[], most = 20): readonly Issue[] {
  const rest = issues.length - most
  return rest <= 0 ? issues : [...issues.slice(0, most), changed('Export', `${rest} more parts have a fault`)]
}
