/** Asks one statement of a case and holds the answer against what the expert says. */
import { OutOfRange } from '@holdfast/seawater'
import { type Answered, CannotAnswer, type Question } from './answers/answer.ts'
import { certainAnswer } from './answers/certain.ts'
import { answers } from './answers/index.ts'
import type { CaseFile, Expected, Statement } from './case-file.ts'
import { meets } from './compare.ts'
import { differenceFor } from './differences.ts'
import type { ModelAnswers } from './model-answers.ts'
import { withVariant } from './variant.ts'

export type Outcome =
  | { readonly result: 'passed'; readonly got: string }
  | { readonly result: 'failed'; readonly got: string }
  | { readonly result: 'skipped'; readonly because: string }

const alwaysKnown = ['quantity', 'from_', 'to', 'variant', 'against']

/** Keys of a check that its quantity does not read: the answer was given without them. */
export function unreadKeys({ check }: Statement): readonly string[] {
  const known = answers[check.quantity]
  if (known === undefined) return []
  return Object.keys(check).filter((key) => !alwaysKnown.includes(key) && !(known.keys ?? []).includes(key))
}

export function ask(file: CaseFile, { check, expected }: Statement, model: ModelAnswers): Outcome {
  try {
    const answered = answerTo({
      file: withVariant(file, check.variant),
      check,
      model,
      words: wordsOf(expected),
    })
    if ('skipped' in answered) return { result: 'skipped', because: answered.skipped }
    if (meets(answered, expected)) return { result: 'passed', got: shown(answered.value) }
    const difference = differenceFor(check)
    if (difference !== undefined)
      return { result: 'skipped', because: `documented difference (${difference})` }
    return { result: 'failed', got: shown(answered.value) }
  } catch (error) {
    if (error instanceof CannotAnswer || error instanceof OutOfRange)
      return { result: 'failed', got: `no answer: ${error.message}` }
    // A defect of ours in one answer must not hide what the other answers are.
    return { result: 'failed', got: `broke off: ${error instanceof Error ? error.stack : String(error)}` }
  }
}

function wordsOf({ equals = [], one_of = [], includes = [], excludes = [] }: Expected): readonly string[] {
  return [equals, one_of, includes, excludes].flat(2).filter((word) => typeof word === 'string')
}

function answerTo(question: Question): Answered {
  const { check } = question
  const certain = certainAnswer(question)
  if (certain !== undefined) return certain
  const known = answers[check.quantity]
  if (known === undefined) throw new CannotAnswer(`no quantity is called "${check.quantity}"`)
  return known.answer(question)
}

export function shown(value: unknown): string {
  if (typeof value === 'number') return Number.isInteger(value) ? `${value}` : value.toPrecision(4)
  return JSON.stringify(value) ?? 'nothing'
}

/** The expectation in a line, without the closed form that stands beside a range. */
export function shownExpectation({ closed_form, closed_form_bounds: _bounds, ...held }: Expected): string {
  const words = Object.entries(held).map(
    ([key, value]) => `${key.replace('_', ' ')} ${JSON.stringify(value)}`,
  )
  return closed_form === undefined
    ? words.join(' and ')
    : `${words.join(' and ')} (closed form ${closed_form})`
}
