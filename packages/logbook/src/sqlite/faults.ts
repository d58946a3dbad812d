import type { Issue } from '../issue.ts'

/** The file is not what this program wrote. */
export function damaged(file: string, why: string): Issue {
  return {
    code: 'damaged-file',
    where: `Log ${file}`,
    got: `it is damaged or no log (${why})`,
    accepted: 'A log as this program wrote it.',
    next: 'Put your last backup in its place and keep the damaged file. Nothing was changed.',
  }
}

/** The file may be whole, and something keeps this program from it. */
export function notOpened(file: string, why: string): Issue {
  return {
    code: 'log-not-opened',
    where: `Log ${file}`,
    got: `it cannot be opened (${why})`,
    accepted: 'A log that no other program has locked, on a disk with room.',
    next: 'Close the other program or free some room, then start again. Nothing was changed.',
  }
}

export const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
