/** What is wrong with something typed. The words are in `words.ts`. */
export type IssueCode =
  | 'empty'
  | 'not-a-number'
  | 'range-reversed'
  | 'negative'
  | 'zero'
  | 'not-one-number'
  | 'no-unit'
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'unit-syntax'
  | 'unit-division'
  | 'too-large'
  | 'needs-density'
  | 'needs-hours'
  | 'needs-spectrum'
  | 'needs-sea-water'

/** What to do about it. */
export type NextStep =
  | 'write-unit'
  | 'write-brackets'
  | 'give-volume'
  | 'give-mass'
  | 'give-area'
  | 'give-length'
  | 'give-temperature'
  | 'give-duration'
  | 'give-flow'
  | 'give-nitrate'
  | 'give-nitrite'
  | 'give-ammonia'
  | 'give-phosphate'
  | 'give-alkalinity'
  | 'give-salinity'
  | 'give-silicate'
  | 'give-calcium'
  | 'give-magnesium'
  | 'give-potassium'
  | 'give-power'
  | 'give-light'
  | 'give-daily-light'
  | 'give-density'
  | 'tell-density'
  | 'give-same-scale'

/** One thing wrong: data, so that a page, an import and a terminal can each say it. */
export interface Issue {
  readonly code: IssueCode
  /** Name of the field, in the keeper's words. */
  readonly where: string
  readonly got: string
  readonly accepted: readonly string[]
  readonly next: NextStep
}

export type QuestionCode =
  | 'which-gallon'
  | 'which-fluid-ounce'
  | 'which-form'
  | 'which-silicate'
  | 'which-alkalinity'
  | 'which-reference-temperatures'
  | 'which-conductivity-temperature'
  | 'which-comma'
  | 'what-trace'

export interface Option {
  /** The same input made clear: parse this instead. */
  readonly answer: string
  readonly means: string
  /** What the figure typed is multiplied by to come to the canonical unit, where that is all there is to it. */
  readonly factor?: number
}

/** What was typed has several meanings, and the keeper says which. */
export interface Question {
  readonly code: QuestionCode
  readonly where: string
  readonly got: string
  readonly question: string
  readonly options: readonly Option[]
}

export interface Understood<T> {
  readonly ok: true
  readonly value: T
  readonly issues?: never
  readonly ask?: never
}

export interface Refused {
  readonly ok: false
  readonly issues: readonly Issue[]
  readonly ask?: never
}

export interface Asked {
  readonly ok: false
  readonly ask: Question
  readonly issues?: never
}

/** Understood, refused with every issue, or a question back. */
export type Answer<T> = Understood<T> | Refused | Asked

export function understood<T>(value: T): Understood<T> {
  return { ok: true, value }
}

export function refused(...issues: readonly Issue[]): Refused {
  return { ok: false, issues }
}
