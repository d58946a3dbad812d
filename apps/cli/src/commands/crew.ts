import {
  crewPlan,
  crewPlanOfSeveral,
  type Lent,
  loadSolver,
  type Present,
  type Wishes,
} from '@holdfast/crew-plan'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { acceptCrew } from '../accept-crew.ts'
import { listed } from '../listed.ts'
import type { Where } from '../open-log.ts'
import { presentIn } from '../present-in.ts'
import { progress } from '../progress.ts'
import { refuse } from '../refuse.ts'
import type { Terminal } from '../terminal.ts'
import { crewInWords, nameOf } from './crew-words.ts'

export interface CrewOptions extends Where {
  readonly system?: string
  /** Other systems that share one plan with it. */
  readonly with: readonly string[]
  readonly members: number
  readonly seed: number
  /** Vessel that the crew is for; without it the one with the largest surfaces. */
  readonly vessel?: string
  readonly withCaution?: true
  readonly never: readonly string[]
  readonly only: readonly string[]
  readonly like: readonly string[]
  readonly keep?: true
  readonly mostOfOne?: number
  readonly byHand?: number
  readonly budget?: number
  readonly accept?: true
  readonly json?: true
}

/** The animals that hold what grows on the last day of the log and find food when less grows, after a trial in the model. */
export async function crewCommand(options: CrewOptions, terminal: Terminal): Promise<void> {
  if (options.with.length > 0) return await together(options, terminal)
  const { log, present } = await presentIn(options, 'Crew', terminal)
  const { system, asOf } = log
  vesselIn(system, options.vessel)
  const running = progress(terminal, 'Plans tried for a year')
  const wishes = wishesOf(options)
  const answer = crewPlan({ present, wishes }, await loadSolver(), undefined, running)
  running.done()
  const entry =
    options.accept && answer.status === 'plan' ? await acceptCrew(log, answer, wishes, options) : null
  const asOfDate = dateOf(asOf, system.timeZone)
  terminal.out(
    options.json
      ? JSON.stringify({ system: system.id, as_of: asOfDate, ...answer, entry }, null, 2)
      : `${crewInWords(log, answer)}${entry === null ? '' : `\n\nKept in the log. To take it back: holdfast log undo ${entry}`}`,
  )
}

const wishesOf = ({
  vessel,
  never,
  only,
  like,
  keep,
  mostOfOne,
  byHand,
  budget,
  withCaution,
}: CrewOptions): Wishes => ({
  never,
  liked: like,
  ...(vessel === undefined ? {} : { vessel }),
  ...(only.length > 0 ? { only } : {}),
  ...(keep ? { keep: 'all' } : {}),
  ...(mostOfOne === undefined ? {} : { mostOfOne }),
  ...(byHand === undefined ? {} : { byHandMost_g_week: byHand }),
  ...(budget === undefined ? {} : { budget_usd: budget }),
  ...(withCaution ? { withCaution: 'all' } : {}),
})

/** @throws Refused where a vessel is meant that is not there */
function vesselIn({ id, vessels }: SystemLog['system'], meant?: string): void {
  if (meant === undefined || vessels.some((vessel) => vessel.id === meant)) return
  const accepted = `There are: ${vessels.map((vessel) => vessel.id).join(', ')}.`
  throw refuse(
    'no-such-vessel',
    'Vessel',
    `"${meant}" is not in ${id}`,
    accepted,
    'Name one of them with --vessel.',
  )
}

/** One plan over several systems, in which one lends to another before any is bought. */
async function together(options: CrewOptions, terminal: Terminal): Promise<void> {
  const { system: first, with: others } = options
  if (first === undefined)
    throw refuse(
      'which-system',
      'System',
      'none is named beside --with',
      'The system that the others are planned with.',
      'Name it with --system.',
    )
  const each: { readonly log: SystemLog; readonly present: Present }[] = []
  for (const system of new Set([first, ...others]))
    each.push(await presentIn({ ...options, system }, `Crew of ${system}`, terminal))
  for (const { log } of each) vesselIn(log.system, options.vessel)
  const wishes = wishesOf(options)
  const running = progress(terminal, 'Plans tried for a year')
  const questions = each.map(({ present }) => ({ present, wishes }))
  const { answers, lent } = crewPlanOfSeveral(questions, await loadSolver(), undefined, running)
  running.done()
  const stands = answers.every(({ status }) => status === 'plan')
  const entries: (string | null)[] = []
  for (const [s, answer] of answers.entries())
    entries.push(
      options.accept && stands && answer.status !== 'none'
        ? await acceptCrew(each[s].log, answer, wishes, options)
        : null,
    )
  const systems = answers.map((answer, s) => {
    const { system, asOf } = each[s].log
    return { system: system.id, as_of: dateOf(asOf, system.timeZone), ...answer, entry: entries[s] }
  })
  const kept = entries.flatMap((entry) => (entry === null ? [] : [`holdfast log undo ${entry}`]))
  terminal.out(
    options.json
      ? JSON.stringify({ systems, lent }, null, 2)
      : [
          ...listed('Lent from one system to another, with quarantine on the way', lent.map(lentSaid)),
          ...(lent.length === 0
            ? ['Nobody is lent: no system has animals to spare that another would buy.']
            : []),
          ...answers.map((answer, s) => crewInWords(each[s].log, answer)),
          ...listed('Kept in the log. To take it back', kept),
        ].join('\n\n'),
  )
}

const lentSaid = ({ taxon, count, from, to }: Lent): string =>
  `${count} ${nameOf(taxon)}: from ${from} to ${to}`
