import type { PlanIssue } from '@holdfast/crew-plan'
import { named } from '@holdfast/facts/names'

/** An issue of a plan as a sentence; taxa are called by their trade names. */
export function issueText(
  { where, got, accepted, next }: PlanIssue,
  names: ReadonlyMap<string, string> = new Map(),
): string {
  const about = names.get(where) ?? named(where)
  return `${about.charAt(0).toUpperCase()}${about.slice(1)} ${named(got)}${accepted === '' ? '' : `; accepted: ${accepted}`}. ${next}`
}
