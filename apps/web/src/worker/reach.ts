import { presentOfPast } from '@holdfast/crew-plan'
import { explanations, type OutlookQuestion, type Past, type Running } from '@holdfast/inference'
import { reachOf } from '@holdfast/reach'
import type { ReachTold } from './answers.ts'

/** The reach for a past that is known; fetched when one is asked for. */
export const reachOfPast = (past: Past, question: OutlookQuestion, running: Running): ReachTold => ({
  reach: reachOf(presentOfPast(past, question, past.members.length), running),
  processes: explanations(past.model),
})
