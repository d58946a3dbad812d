import type { Issue } from '../issue.ts'

/** Why entries could not be stored: the disk or the server did not take them. */
export function notWritten(reason: string): Issue {
  return {
    code: 'log-not-written',
    where: 'Log',
    got: `the disk did not take it (${reason})`,
    accepted: 'A log that no other program has locked, on a disk with room.',
    next: 'Free some room or close the other program, then send again. Nothing was stored.',
  }
}

/** Why entries could not be read. */
export function notRead(reason: string): Issue {
  return {
    code: 'log-not-read',
    where: 'Log',
    got: `it could not be read (${reason})`,
    accepted: 'A log on a disk that answers.',
    next: 'Try again; if it stays, put your last backup in its place. Nothing was changed.',
  }
}
