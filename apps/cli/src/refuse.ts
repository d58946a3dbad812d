import { type Issue, Refused } from '@holdfast/logbook'

/** What is wrong, in the order: field, what was there, what would be right, what to do. */
export function refuse(code: string, where: string, got: string, accepted: string, next: string): Refused {
  const issue: Issue = { code, where, got, accepted, next }
  return new Refused([issue])
}
