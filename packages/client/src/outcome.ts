import type { Issue } from '@holdfast/logbook'

/** What a call came to. */
export type Outcome<Data> =
  | { readonly ok: true; readonly data: Data }
  | {
      readonly ok: false
      /** Whether the server said this; where it was not reached, the same call may be sent again. */
      readonly answered: boolean
      /** HTTP status, where there was an answer. */
      readonly status?: number
      readonly issues: readonly Issue[]
    }

interface Called<Data> {
  readonly data?: Data
  readonly error?: unknown
  readonly response: Response
}

/**
 * Waits for a call of the client; a server that is not reached is an outcome too, and no exception.
 *
 * @example const sent = await outcome(client.POST('/api/entries', { body: { entries } }))
 */
export async function outcome<Data>(call: Promise<Called<Data>>): Promise<Outcome<Data>> {
  let called: Called<Data>
  try {
    called = await call
  } catch {
    return { ok: false, answered: false, issues: [notReached] }
  }
  const { data, error, response } = called
  if (response.ok && data !== undefined) return { ok: true, data }
  return { ok: false, answered: true, status: response.status, issues: issuesIn(error, response.status) }
}

const notReached: Issue = {
  code: 'not-reached',
  where: 'Holdfast',
  got: 'it does not answer',
  accepted: 'A Holdfast that runs, on a machine that can be reached.',
  next: 'Start it again, then send this again: nothing is stored twice.',
}

/** A refusal of the API brings its issues; what stands before it, such as the guard, says a sentence. */
function issuesIn(error: unknown, status: number): readonly Issue[] {
  const issues = typeof error === 'object' && error !== null ? Reflect.get(error, 'issues') : undefined
  if (Array.isArray(issues)) return issues
  const said = typeof error === 'string' ? error.trim().slice(0, 500) : ''
  const got = `it answered ${status}`
  const plain = {
    code: 'refused',
    where: 'Holdfast',
    got,
    accepted: '',
    next: 'Look into the window in which it runs.',
  }
  return [said === '' ? plain : { ...plain, inWords: said }]
}
