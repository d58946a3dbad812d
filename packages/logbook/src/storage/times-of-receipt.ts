import { type Issue, Refused } from '../issue.ts'
import type { Kept, Sent } from '../logbook.ts'

/** The last time of receipt of each system, among the entries of a workspace. */
export type LastKnown = ReadonlyMap<string, string>

/** Now, or the system's last receipt where the clock was set back: order must not turn round. */
export function comingNow(last: LastKnown, now: Date): (entry: Sent) => string {
  const said = now.toISOString()
  return ({ system }) => {
    const before = last.get(system)
    return before !== undefined && before > said ? before : said
  }
}

/** The time another store gave, for the systems that are not here yet; else as `comingNow`. */
export function takenOver(kept: readonly Kept[], last: LastKnown, now: Date): (entry: Sent) => string {
  const known = new Map(kept.map(({ id, knownAt }) => [id, knownAt]))
  const late = comingNow(last, now)
  return (entry) => (last.has(entry.system) ? undefined : known.get(entry.id)) ?? late(entry)
}

/** @throws Refused where a time of receipt is none or runs backwards within its system */
export function refuseBackwards(kept: readonly Kept[]): void {
  const last = new Map<string, string>()
  const issues: Issue[] = []
  for (const { id, system, knownAt } of kept) {
    const fault = faultOf(knownAt, last.get(system))
    if (fault !== undefined) issues.push({ ...fault, where: `Entry ${id}: knownAt` })
    last.set(system, knownAt)
  }
  if (issues.length > 0) throw new Refused(issues)
}

function faultOf(knownAt: string, before: string | undefined): Omit<Issue, 'where'> | undefined {
  const next = 'Take the export anew. Nothing was stored.'
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/.test(knownAt)) {
    const accepted = 'An instant of UTC such as 2026-02-01T08:00:00.000Z.'
    return { code: 'not-an-instant', got: `"${knownAt}" is no time of receipt`, accepted, next }
  }
  if (before === undefined || before <= knownAt) return undefined
  const got = `${knownAt} comes after an entry received at ${before}`
  return { code: 'order-of-receipt', got, accepted: 'Entries in the order in which they came.', next }
}
