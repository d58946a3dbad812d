import { presentOfPast } from '@holdfast/crew-plan'
import type { OutlookQuestion, Past } from '@holdfast/inference'
import { type LadderAnswer, type LadderWishes, ladder } from '@holdfast/ladder'

/** The ladder for a past that is known; fetched when one is asked for, since it brings its table of measures. */
export function ladderOf(past: Past, question: OutlookQuestion, wishes: LadderWishes): LadderAnswer {
  const { system, observations, events, from } = question
  return ladder({ present: presentOfPast(past, question), system, observations, events, from, ...wishes })
}
