import pg from 'pg'

import { type Issue, Refused } from '../issue.ts'

/** The server did not say that it stored what was sent; it may have, and the answer was lost. */
export function notWritten(reason: string): Issue {
  return {
    code: 'log-not-written',
    where: 'Log',
    got: `the database server did not take it (${reason})`,
    accepted: 'A server that answers, on a disk with room.',
    next: 'Send it again when the server answers: what it has already is not doubled.',
  }
}

/** Why entries could not be read. */
export function notRead(reason: string): Issue {
  return {
    code: 'log-not-read',
    where: 'Log',
    got: `the database server gave no answer (${reason})`,
    accepted: 'A server that answers.',
    next: 'Try again when the server answers. Nothing was changed.',
  }
}

/** Does the work; what the server or the way to it refuses becomes an issue. */
export async function orRefuse<Result>(
  issue: (reason: string) => Issue,
  work: () => Promise<Result>,
): Promise<Result> {
  try {
    return await work()
  } catch (error) {
    throw isOfServer(error) ? new Refused([issue(reasonOf(error))]) : error
  }
}

/** The driver throws its own kind, plain errors for lost connections, and several at once for a name. */
export function isOfServer(error: unknown): error is Error {
  return (
    error instanceof pg.DatabaseError ||
    error instanceof AggregateError ||
    (error instanceof Error && error.constructor === Error)
  )
}

/** What the server said; of several ways to it the first that failed. */
export function reasonOf(error: Error): string {
  const [first]: unknown[] = error instanceof AggregateError ? error.errors : []
  return error.message || (first instanceof Error ? first.message : error.name)
}
