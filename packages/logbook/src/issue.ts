/**
 * What is wrong with an input, as data; words and numbers of the keeper, never of the program.
 * `where` names the field, row or file; `got` what was there; `accepted` what would be right; `next`
 * what to do.
 */
export interface Issue {
  readonly code: string
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
  /** The whole in one sentence, where the package that found it has its own words. */
  readonly inWords?: string
}

/** The issue as one line for a screen or a terminal. */
export function issueInWords({ where, got, accepted, next, inWords }: Issue): string {
  return inWords ?? `${where}: ${got}. ${accepted} ${next}`.trim()
}

/** Thrown where an answer cannot carry issues: a store that cannot write. */
export class Refused extends Error {
  readonly issues: readonly Issue[]

  constructor(issues: readonly Issue[]) {
    super(issues.map(issueInWords).join('\n'))
    this.name = 'Refused'
    this.issues = issues
  }
}
