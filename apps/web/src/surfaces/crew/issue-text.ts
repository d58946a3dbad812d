import type { PlanIssue } from '@holdfast/crew-plan'
import { spaced } from '../../figure/spaced.ts'

/** An issue of a plan as a sentence; taxa are called by their trade names. */
export function issueText(
  { where, got, accepted, next }: PlanIssue,
  names: ReadonlyMap<string, string> = new Map(),
): string {
  const about = names.get(where) ?? spaced(where)
  return `${about.charAt(0).toUpperCase()}${about.slice(1)} ${spaced(got)}${accepted === '' ? '' : `; accepted: ${accepted}`}. ${next}`
}
