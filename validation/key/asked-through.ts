/** A keeper who answers what the key asks from what the vignette tells, and cannot look at the rest. */
import { type Answers, type Identification, identify } from '@holdfast/identification'

export interface AskedThrough {
  /** Questions that the keeper answered. */
  readonly answered: number
  /** Questions put, those the vignette says nothing of among them. */
  readonly put: number
  readonly end: Identification
}

/** Asks until the measures agree or no question is worth its effort; the genera are not asked for. */
export function askedThrough(told: Answers): AskedThrough {
  let answers: Answers = {}
  const passedOver: string[] = []
  for (;;) {
    const end = identify(answers, passedOver)
    const answered = Object.keys(answers).length
    if (end.ends !== 'not yet' || end.next === undefined)
      return { answered, put: answered + passedOver.length, end }
    const { key } = end.next
    const state = told[key]
    if (state === undefined) passedOver.push(key)
    else answers = { ...answers, [key]: state }
  }
}
