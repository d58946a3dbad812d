import type { Caution, Response, Trait } from '@holdfast/facts'
import { cautionsFor } from './cautions.ts'
import { fieldKey, slimeKinds } from './field-key.ts'
import { finerKey } from './finer-key.ts'
import { type Answers, chanceOf } from './key.ts'
import { type SetApart, setApart } from './look-alikes.ts'
import { slimeFrom } from './next-question.ts'
import { answerable } from './read-answers.ts'
import { type Verdict, verdictOf } from './verdict.ts'

/** What a growth is, what to do on what is known, and what to look at next. */
export interface Identification extends Verdict {
  /** The chance that it is one of the kinds that come as toxic slime. */
  readonly slime: number
  /** Whether that chance is high enough for hands to stay off, or something that was noted speaks for slime. */
  readonly handsOff: boolean
  /** Among the genera of the likeliest kind, where they are met differently and the measures agree on the kind. */
  readonly finer?: Verdict
  /** The one look that tells most now; undefined where the key has ended. */
  readonly next?: Trait
  readonly cautions: readonly Caution[]
  readonly lookAlikes: readonly SetApart[]
}

/** A kind is likely enough from here on for its genus to be asked for, once the measures agree. */
const settledFrom = 0.5

/**
 * Tells what a growth is from what was noted of it.
 *
 * @param answers     as `readAnswers` gives them: traits in any order
 * @param passedOver  traits that the keeper cannot look at: they are not asked for again
 * @param wanted      a trait that the keeper wants to say next, asked for or not
 */
export function identify(
  answers: Answers,
  passedOver: readonly string[] = [],
  wanted?: string,
): Identification {
  const verdict = verdictOf(fieldKey, answers, passedOver)
  const [first] = verdict.chances
  const settled = verdict.ends === 'agreed' && first !== undefined && first.chance >= settledFrom
  const key = settled ? finerKey(first.key) : undefined
  const finer = key && verdictOf(key, answers, passedOver)
  const slime = chanceOf(verdict.chances, fieldKey.slime)
  const handsOff =
    slime > slimeFrom || (verdict.suspect !== undefined && slimeKinds.includes(verdict.suspect.key))
  const lookAlikes = setApart(fieldKey, verdict.chances, answers, handsOff)
  const next =
    answerable().find((one) => one.key === wanted) ??
    verdict.questions[0]?.trait ??
    (finer && (confirming(lookAlikes, passedOver) ?? finer.questions[0]?.trait))
  return {
    ...verdict,
    slime,
    handsOff,
    ...(finer && { finer }),
    ...(next && { next }),
    cautions: cautionsFor(verdict.chances, handsOff, next, actsOf(verdict, finer)),
    lookAlikes,
  }
}

/** A look that parts the kind from those it is taken for, before its genus is asked: nothing is touched for it. */
function confirming(lookAlikes: readonly SetApart[], passedOver: readonly string[]): Trait | undefined {
  const open = lookAlikes.filter(({ looked, waits }) => !looked && !waits).flatMap(({ traits }) => traits)
  const look = open.find((key) => !passedOver.includes(key))
  return fieldKey.traits.find(({ key, contact }) => key === look && contact !== 'touch')
}

/** What is proposed to be done: nothing before the measures agree. */
const actsOf = (verdict: Verdict, finer: Verdict | undefined): readonly Response[] =>
  [verdict, finer].flatMap((one) => (one?.ends === 'agreed' ? [one.best.response] : []))
