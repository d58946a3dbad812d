import { commissioning, startUpQuestion } from '@holdfast/commissioning'
import type { OutlookQuestion, Past, Running } from '@holdfast/inference'
import type { StartUpTold } from './answers.ts'

export { startUpQuestion }

/** The start-up for a past that is known; fetched when one is asked for. */
export const startUpOfPast = (past: Past, question: OutlookQuestion, running: Running): StartUpTold => ({
  startUp: commissioning(past, question, running),
  processes: [],
})
