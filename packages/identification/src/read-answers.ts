import { finerKinds, type Trait, traits } from '@holdfast/facts'
import type { Answers } from './key.ts'

/** What could not be read of an answer. */
export interface AnswerIssue {
  readonly code: 'not-answers' | 'unknown-trait' | 'unknown-state'
  /** The trait, or 'Traits' for the whole. */
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
}

export type AnswersRead =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly issues: readonly AnswerIssue[] }

const all: ReadonlyMap<string, Trait> = new Map(
  [...traits(), ...finerKinds().flatMap((finer) => finer.traits)].map((one) => [one.key, one]),
)

/** Every trait that may be answered: those of the field key, and those that part the genera of a kind. */
export const answerable = (): readonly Trait[] => [...all.values()]

/**
 * Reads an object of trait and state.
 *
 * @returns the answers, or every issue at once
 */
export function readAnswers(given: unknown): AnswersRead {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    return {
      ok: false,
      issues: [
        {
          code: 'not-answers',
          where: 'Traits',
          got: JSON.stringify(given) ?? String(given),
          accepted: 'an object of trait and state',
          next: 'Give an object such as {"colour": "brown", "form": "dust_film"}.',
        },
      ],
    }
  const entries = Object.entries(given)
  const issues = entries.flatMap(([key, state]) => issueOf(key, state))
  return issues.length > 0
    ? { ok: false, issues }
    : { ok: true, answers: Object.fromEntries(entries.map(([key, state]) => [key, String(state)])) }
}

function issueOf(key: string, state: unknown): readonly AnswerIssue[] {
  const trait = all.get(key)
  if (trait === undefined) {
    const accepted = [...all.keys()].join(', ')
    return [{ code: 'unknown-trait', where: 'Traits', got: key, accepted, next: `Name one of ${accepted}.` }]
  }
  const states = trait.states.map((one) => one.key)
  if (typeof state === 'string' && states.includes(state)) return []
  const accepted = states.join(', ')
  return [
    {
      code: 'unknown-state',
      where: trait.key,
      got: typeof state === 'string' ? state : (JSON.stringify(state) ?? String(state)),
      accepted,
      next: `Give one of ${accepted}; leave the trait out where it was not looked at.`,
    },
  ]
}

/** One issue as a sentence, such as: colour: "blue" is not known. Give one of … */
export const issueInWords = ({ where, got, next }: AnswerIssue): string =>
  `${where}: ${got.startsWith('{') || got.startsWith('[') ? got : `"${got}"`} is not known. ${next}`
