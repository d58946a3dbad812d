import { type CrewAnswer, crewPlan, loadSolver, presentOfPast, type Wishes } from '@holdfast/crew-plan'
import { past } from '@holdfast/inference'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { progress } from '../progress.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface CrewOptions extends Where {
  readonly system?: string
  readonly members: number
  readonly seed: number
  readonly withCaution?: true
  readonly never: readonly string[]
  readonly budget?: number
  readonly json?: true
}

/** A day is long enough for a past without a future. */
const horizonDays = 1

/** The animals that hold what grows on the last day of the log and find food when less grows, after a trial in the model. */
export async function crewCommand(options: CrewOptions, terminal: Terminal): Promise<void> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { members, seed } = options
  const running = progress(terminal, `Crew over ${members} members`)
  const question = { system, observations, events, ownFacts, from, asOf, horizonDays, members, seed }
  const present = presentOfPast(past(question, running), question)
  running.done()
  const wishes: Wishes = {
    never: options.never,
    ...(options.withCaution ? { withCaution: 'all' } : {}),
    ...(options.budget === undefined ? {} : { budget_usd: options.budget }),
  }
  const answer = crewPlan({ present, wishes }, await loadSolver())
  terminal.out(
    options.json
      ? JSON.stringify({ system: system.id, as_of: dateOf(asOf, system.timeZone), ...answer }, null, 2)
      : inWords(log, answer),
  )
}

function inWords({ system, asOf }: SystemLog, answer: CrewAnswer): string {
  const title = `Crew of ${system.name} on ${dateOf(asOf, system.timeZone)}`
  if (answer.status === 'none') return [title, ...answer.issues.map(said)].join('\n\n')
  const { crew, byHand, steps, check } = answer
  const verdict =
    answer.status === 'plan'
      ? 'Tried for a year in the model, with the hand at its side: nobody starves, and what grows is held.'
      : 'Tried for a year in the model, this crew does not do. Do not buy it; below it says why.'
  const rows = crew.map(({ tradeName, taxon, there, come, leave, order, price_usd: { low, high } }) => [
    tradeName,
    taxon,
    `${there}`,
    `${come}`,
    `${leave}`,
    `${order}`,
    order === 0 ? '' : `${low} to ${high}`,
  ])
  const right = { stands: 'right' } as const
  const columns = [
    { heading: 'Animal' },
    { heading: 'Taxon' },
    { heading: 'There', ...right },
    { heading: 'Come', ...right },
    { heading: 'Leave', ...right },
    { heading: 'To order', ...right },
    { heading: 'Price, US$', ...right },
  ]
  const hand = byHand
    .filter(({ grams_dry_per_week }) => grams_dry_per_week >= 0.05)
    .map(
      ({ surface, patch, kind, grams_dry_per_week }) =>
        `${kind} on ${surface}, ${patch}: ${grams_dry_per_week.toPrecision(2)} g dry a week`,
    )
  const cautions = crew
    .filter(({ come }) => come > 0)
    .flatMap(({ tradeName, cautions: words }) => words.map((word) => `${tradeName}: ${word}`))
  const order = steps.map(
    ({ after_days, animals }) =>
      `${dateOf(asOf + after_days, system.timeZone)}: ${animals.map(({ taxon, count }) => `${count} ${taxon}`).join(', ')}`,
  )
  return [
    title,
    ...(crew.length === 0
      ? ['No animal earns its place: little grows, or nothing eats it.']
      : [table(columns, rows), verdict]),
    ...listed('When they come', order),
    ...listed('For the hand', hand),
    ...listed('Mind', cautions),
    ...listed('What the trial says', check.issues.map(said)),
  ].join('\n\n')
}

const said = ({ where, got, accepted, next }: CrewIssue): string =>
  `${where} ${got}${accepted === '' ? '' : `; accepted: ${accepted}`}. ${next}`

type CrewIssue = Extract<CrewAnswer, { readonly status: 'none' }>['issues'][number]

const listed = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [[heading, ...lines.map((line) => `  ${line}`)].join('\n')]
