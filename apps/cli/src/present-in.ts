import { type Present, presentOfPast } from '@holdfast/crew-plan'
import { type OutlookQuestion, past } from '@holdfast/inference'
import type { SystemLog } from '@holdfast/logbook'
import { chooseSystem, type Where, withLog } from './open-log.ts'
import { progress } from './progress.ts'
import type { Terminal } from './terminal.ts'

/** A day is long enough for a past without a future. */
const horizonDays = 1

/**
 * The chosen system on the last day of its log, as a few members that carry the weight of all.
 *
 * @param asked  what is made of the log's question before the model is asked
 */
export async function presentIn(
  options: Where & { readonly system?: string; readonly members: number; readonly seed: number },
  what: string,
  terminal: Terminal,
  asked = (question: OutlookQuestion): OutlookQuestion => question,
): Promise<{ readonly log: SystemLog; readonly present: Present; readonly question: OutlookQuestion }> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { members, seed } = options
  const running = progress(terminal, `${what} over ${members} members`)
  const told = { system, observations, events, ownFacts, from, asOf, horizonDays, members, seed }
  const question = asked(told)
  const present = presentOfPast(past(question, running), question)
  running.done()
  return { log, present, question: told }
}
