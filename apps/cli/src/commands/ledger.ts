import type { Atom } from '@holdfast/ecosystem'
import { type LedgerAnswer, ledgerOf } from '@holdfast/inference'
import { dateOf, endOfDay, modelDay, type SystemLog } from '@holdfast/logbook'
import { type Budget, budget, type Line } from '../budget.ts'
import { figure, percent } from '../figure.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { progress } from '../progress.ts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface LedgerOptions extends Where {
  readonly system?: string
  readonly from?: string
  readonly to?: string
  readonly atom?: Atom
  readonly members: number
  readonly seed: number
  readonly json?: true
}

const atomNames: Readonly<Record<Atom, string>> = {
  N: 'Nitrogen',
  P: 'Phosphorus',
  C: 'Organic carbon',
  Si: 'Silicon',
}

const titles: Readonly<Record<(Budget['inputs'] | Budget['exports'])[number]['name'], string>> = {
  feed: 'Feed',
  source_water: 'Source water',
  salt: 'Salt mix',
  dose: 'Doses',
  rock: 'Rock added',
  animals_added: 'Animals added',
  air: 'Air: nitrogen gas and inorganic carbon',
  foam: 'Foam',
  water_change: 'Discarded water',
  mechanical_filter: 'Filter waste',
  siphoned_detritus: 'Waste siphoned out',
  ferric_media: 'Ferric media',
  activated_carbon: 'Activated carbon',
  refugium_harvest: 'Harvest of the refugium',
  scrubber_harvest: 'Harvest of the turf scrubber',
  hand_removed_algae: 'Algae removed by hand',
  animals_removed: 'Animals lost or given away',
  not_explained_yet: 'Not explained yet',
}

/** The budget of a span, in a table or as JSON. */
export async function ledgerCommand(options: LedgerOptions, terminal: Terminal): Promise<void> {
  // The log is closed before the run, which may take long and be cut off.
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { members, seed } = options
  const { system, observations, events, ownFacts } = log
  const { from, to } = spanOf(log, options)
  const running = progress(terminal, `Ledger over ${members} members`)
  const question = {
    system,
    observations,
    events,
    ownFacts,
    from: log.from,
    asOf: Math.max(log.asOf, to),
    horizonDays: 0,
    members,
    seed,
  }
  const answer = ledgerOf(question, { from, to }, running)
  running.done()
  const atoms: readonly Atom[] = options.atom ? [options.atom] : ['N', 'P', 'C']
  const budgets = atoms.map((atom) => ({ atom, of: budget(answer.ledger, atom) }))
  const asked = { log, answer, seed }
  terminal.out(options.json ? JSON.stringify(asJson(asked, budgets), null, 2) : inWords(asked, budgets))
}

interface Asked {
  readonly log: SystemLog
  readonly answer: LedgerAnswer
  readonly seed: number
}
type Budgets = readonly { readonly atom: Atom; readonly of: Budget }[]

/** From the midnight that begins the first day to the one that ends the last; the whole log where not said. */
function spanOf(log: SystemLog, said: Pick<LedgerOptions, 'from' | 'to'>): { from: number; to: number } {
  const { timeZone } = log.system
  const whole = log.dates
  const [first, last] = [said.from ?? whole.from, said.to ?? whole.to]
  if (first > last)
    throw refuse(
      'span-reversed',
      'Span',
      `it begins on ${first}, after its end on ${last}`,
      'A first day not after the last.',
      'Mend --from or --to.',
    )
  if (last < whole.from || first > whole.to)
    throw refuse(
      'outside-the-log',
      'Span',
      `${first} to ${last} has no day of the log`,
      `The log runs from ${whole.from} to ${whole.to}.`,
      'Mend --from or --to.',
    )
  return { from: modelDay(first, 0, timeZone), to: endOfDay(last, timeZone) }
}

function asJson({ log, answer, seed }: Asked, budgets: Budgets): unknown {
  const { ledger, members } = answer
  return {
    system: log.system.id,
    ...datesOf(log, answer),
    days: ledger.to - ledger.from,
    members,
    seed,
    interval: 0.9,
    atoms: Object.fromEntries(budgets.map(({ atom, of }) => [atom, of])),
    not_modelled_yet: ledger.notModelled,
    remarks: [...answer.remarks, ...log.remarks],
  }
}

/** First and last day of the span, both in it. */
function datesOf({ system }: SystemLog, { ledger }: LedgerAnswer): { from: string; to: string } {
  const minute = 1 / 1440
  return {
    from: dateOf(ledger.from + minute, system.timeZone),
    to: dateOf(ledger.to - minute, system.timeZone),
  }
}

function inWords({ log, answer, seed }: Asked, budgets: Budgets): string {
  const { from, to } = datesOf(log, answer)
  const { ledger, members } = answer
  const missing = ledger.notModelled
  return [
    `Ledger of ${log.system.name}, ${from} to ${to} (${members} members, seed ${seed}; in brackets 90 % intervals)`,
    ...budgets.map(({ atom, of }) => tableOf(atom, of)),
    missing.length === 0
      ? 'Not modelled yet: nothing that this system has.'
      : `Not modelled yet: ${missing.join(', ')}.`,
    ...answer.remarks,
    ...log.remarks,
  ].join('\n\n')
}

function tableOf(atom: Atom, { inputs, exports, stored, inputs_total, exports_total }: Budget): string {
  const row = (title: string, line: Line): string[] => [
    title,
    figure({ value: line.mg_per_day, low: line.mg_per_day_low, high: line.mg_per_day_high }),
    line.share_of_inputs === null ? '' : percent(line.share_of_inputs),
  ]
  return table(
    [
      { heading: atomNames[atom] },
      { heading: `mg ${atom} per day`, stands: 'right' },
      { heading: 'of input', stands: 'right' },
    ],
    [
      row('In', inputs_total),
      ...inputs.map((line) => row(`  ${titles[line.name]}`, line)),
      row('Out', exports_total),
      ...exports.map((line) => row(`  ${titles[line.name]}`, line)),
      row('Stored', stored),
    ],
  )
}
