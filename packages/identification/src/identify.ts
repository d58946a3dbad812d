import type { Caution, Trait } from '@holdfast/facts'
import { cautionsFor } from './cautions.ts'
import { fieldKey, slimeKinds } from './field-key.ts'
import { finerKey } from './finer-key.ts'
import { type Answers, chanceOf } from './key.ts'
import { type SetApart, setApart } from './look-alikes.ts'
import { slimeFrom } from './next-question.ts'
import { type Verdict, verdictOf } from './verdict.ts'

/** What a growth is, what to do on what is known, and what to look at next. */
export interface Identification extends Verdict {
  /** The chance that it is one of the kinds that come as toxic slime. */
  readonly slime: number
  /** Whether that chance is high enough for hands to stay off, or something that was noted speaks for slime. */
  readonly handsOff: boolean
  /** Among the genera of the likeliest kind, where they are met differently and the kind is settled. */
  readonly finer?: Verdict
  /** The one look that tells most now; undefined where the key has ended. */
  readonly next?: Trait
  readonly cautions: readonly Caution[]
  readonly lookAlikes: readonly SetApart[]
}

/** A kind is settled from here on; only then is its genus asked for. */
const settledFrom = 0.85

/**
 * Tells what a growth is from what was noted of it.
 *
 * @param answers     as `readAnswers` gives them: traits in any order
 * @param passedOver  traits that the keeper cannot look at: they are not asked for again
 */
export function identify(answers: Answers, passedOver: readonly string[] = []): Identification {
  const verdict = verdictOf(fieldKey, answers, passedOver)
  const [first] = verdict.chances
  const settled = verdict.ends !== 'not yet' && first !== undefined && first.chance >= settledFrom
  const key = settled ? finerKey(first.key) : undefined
  const finer = key && verdictOf(key, answers, passedOver)
  const next = (verdict.questions[0] ?? finer?.questions[0])?.trait
  const slime = chanceOf(verdict.chances, fieldKey.slime)
  const handsOff =
    slime > slimeFrom || (verdict.suspect !== undefined && slimeKinds.includes(verdict.suspect.key))
  return {
    ...verdict,
    slime,
    handsOff,
    ...(finer && { finer }),
    ...(next && { next }),
    cautions: cautionsFor(verdict.chances, handsOff, next),
    lookAlikes: setApart(fieldKey, verdict.chances, answers, handsOff),
  }
}
