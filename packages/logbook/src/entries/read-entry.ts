import type { Issue } from '../issue.ts'
import { type Entry, envelope } from './entry.ts'
import { kinds } from './index.ts'
import type { Kind, OldBody } from './kind.ts'
import { schemaIssues } from './schema-issues.ts'

/** An entry understood, or all that is wrong with it. */
export type EntryRead =
  | { readonly ok: true; readonly entry: Entry }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/** The body of version `v` at the newest version of its kind; stored entries are never rewritten. */
export function lift(to: Kind, v: number, body: OldBody): OldBody {
  let lifted = body
  for (let version = v; version < to.v; version++) {
    const step = to.lifts[version]
    if (step === undefined) throw new Error(`kind ${to.name}: no lift from version ${version}`)
    lifted = step(lifted)
  }
  return lifted
}

/**
 * Reads an entry of any version ever released, as JSON gives it. Unknown fields are kept; every issue
 * is reported.
 */
export function readEntry(value: unknown, known: readonly Kind[] = kinds): EntryRead {
  const outer = envelope.safeParse(value)
  if (!outer.success) return { ok: false, issues: schemaIssues(outer.error, 'entry', value) }
  const { kind: name, v, body } = outer.data
  const kind = known.find((one) => one.name === name)
  if (kind === undefined)
    return refused('unknown-kind', `kind "${name}"`, known.map((one) => one.name).join(', '))
  if (v > kind.v)
    return refused('newer-version', `version ${v} of kind "${name}"`, `version ${kind.v} or older`)
  const newest = lift(kind, v, body)
  const inner = kind.body.safeParse(newest)
  if (!inner.success)
    return { ok: false, issues: schemaIssues(inner.error, `entry ${outer.data.id}, ${kind.title}`, newest) }
  // The kind's own schema has just checked the body, which the compiler cannot follow through the list.
  return { ok: true, entry: { ...outer.data, v: kind.v, body: inner.data } as Entry }
}

function refused(code: string, got: string, accepted: string): EntryRead {
  const next = 'Update this program, or leave the entry out.'
  return {
    ok: false,
    issues: [
      { code, where: 'entry', got: `${got} is not known here`, accepted: `Known: ${accepted}.`, next },
    ],
  }
}
