import { type Present, presentOfPast } from '@holdfast/crew-plan'
import { past } from '@holdfast/inference'
import type { SystemLog } from '@holdfast/logbook'
import { chooseSystem, type Where, withLog } from './open-log.ts'
import { progress } from './progress.ts'
import type { Terminal } from './terminal.ts'

/** A day is long enough for a past without a future. */
const horizonDays = 1

/** The chosen system on the last day of its log, as a few members that carry the weight of all. */
export async function presentIn(
  options: Where & { readonly system?: string; readonly members: number; readonly seed: number },
  what: string,
  terminal: Terminal,
): Promise<{ readonly log: SystemLog; readonly present: Present }> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { members, seed } = options
  const running = progress(terminal, `${what} over ${members} members`)
  const question = { system, observations, events, ownFacts, from, asOf, horizonDays, members, seed }
  const present = presentOfPast(past(question, running), question)
  running.done()
  return { log, present }
}
