/** What it takes to answer a check, and what comes back. */
import type { CaseFile, Check, Plain } from '../case-file.ts'
import type { ModelAnswers } from '../model-answers.ts'

export interface Question {
  readonly file: CaseFile
  readonly check: Check
  readonly model: ModelAnswers
  /** Words that the expert's list holds: which of them are true is what a list is asked for. */
  readonly words: readonly string[]
}

export type Answered =
  | {
      readonly value: Plain | readonly Plain[]
      /** True: the list has no order. */
      readonly anyOrder?: boolean
      /** Other ways to name the same thing, such as a reading by its quantity instead of its date. */
      readonly alsoCalled?: readonly Plain[]
      /** Where the name of the quantity is a statement: whether it holds. */
      readonly holds?: boolean
    }
  | { readonly skipped: 'model' }

/** How one quantity is answered. */
export interface Answering {
  /** Of the answer; '1' for a number without dimension, 'words' or 'yes or no' for the rest. */
  readonly unit: string
  /** Keys of the check, besides the quantity and the span, that the answer reads. */
  readonly keys?: readonly string[]
  readonly answer: (question: Question) => Answered
}

export type Family = Readonly<Record<string, Answering>>

/** Thrown where a check leaves out what its quantity needs, and the case does not say it either. */
export class CannotAnswer extends Error {
  override readonly name = 'CannotAnswer'
}

/** @returns the number under `key` of the check, or undefined. @throws CannotAnswer if it is no number */
export function numberIn(check: Check, ...keys: readonly string[]): number | undefined {
  const key = keys.find((name) => check[name] !== undefined)
  if (key === undefined) return undefined
  const value = check[key]
  if (typeof value === 'number' && Number.isFinite(value)) return value
  throw new CannotAnswer(`${key}: ${JSON.stringify(value)} is not a number`)
}

/** @returns the text under `key` of the check, or undefined. @throws CannotAnswer if it is no text */
export function textIn(check: Check, ...keys: readonly string[]): string | undefined {
  const key = keys.find((name) => check[name] !== undefined)
  if (key === undefined) return undefined
  const value = check[key]
  if (typeof value === 'string') return value
  throw new CannotAnswer(`${key}: ${JSON.stringify(value)} is not text`)
}

/** @throws CannotAnswer, saying what is missing, where there is nothing */
export function needed<T>(value: T | undefined, what: string): T {
  if (value !== undefined) return value
  throw new CannotAnswer(`needs ${what}`)
}

/** Net water of all vessels, L: they share their water. */
export function waterVolume({ system }: CaseFile): number {
  return system.vessels.reduce((sum, vessel) => sum + vessel.volume_L, 0)
}

/** ISO dates of the check's span; without them the whole log up to the day on which one looks. */
export function spanOf(file: CaseFile, check: Check): { readonly from: string; readonly to: string } {
  return { from: textIn(check, 'from_') ?? file.start, to: textIn(check, 'to') ?? file.asof }
}
