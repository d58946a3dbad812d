import { asMilligrams, atomicMass } from '../../figure/atoms.ts'
import type { ComputedFigure, Derivation, LogEntry } from '../../figure/computed.ts'
import { plain } from '../../figure/numbers.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { BandedRow, LedgerAnswer } from '../../worker/answers.ts'
import type { Amount, Basin, River, Stream } from './streams.ts'

/** What the figures of one ledger are derived from. */
export interface LedgerGround {
  readonly answer: LedgerAnswer
  readonly data: SystemData
}

export function streamFigure(stream: Stream, river: River, ground: LedgerGround): ComputedFigure {
  return inMilligrams(stream.place.title, stream, river, derivationOfRows(stream.rows, stream, river, ground))
}

export function basinFigure(basin: Basin, river: River, ground: LedgerGround): ComputedFigure {
  const steps = basin.balances.map((balance) => ({
    formula: `change of ${titleOf(balance.account, ground)} = end − start`,
    withValues: `${umol(balance.end_umol - balance.start_umol, river)} = ${umol(balance.end_umol, river)} − ${umol(balance.start_umol, river)}`,
  }))
  return inMilligrams(`Change ${basin.place.title.toLowerCase()}`, basin, river, {
    says: overMembers(ground),
    steps: [...steps, conversion(basin, river)],
    facts: [],
    entries: weighing(ground.data),
  })
}

/** A stream as a share of what was fed, per cent. */
export function shareFigure(
  amount: Amount,
  river: River,
  name: string,
  ground: LedgerGround,
  rows: readonly BandedRow[],
): ComputedFigure {
  const per = (umols: number) => (100 * umols) / river.fed_umol
  const below = derivationOfRows(rows, amount, river, ground)
  return {
    name,
    value: per(amount.amount_umol),
    low: per(amount.low_umol),
    high: per(amount.high_umol),
    unit: '%',
    derivation: {
      ...below,
      steps: [
        ...below.steps,
        {
          formula: 'share = amount ÷ what was fed',
          withValues: `${plain(per(amount.amount_umol))} % = ${milligrams(amount.amount_umol, river)} ÷ ${milligrams(river.fed_umol, river)}`,
        },
      ],
    },
  }
}

export function rowFigure(row: BandedRow, river: River, ground: LedgerGround): ComputedFigure {
  return inMilligrams(rowTitle(row, ground), row, river, derivationOfRows([row], row, river, ground))
}

export const titleOf = (account: string, ground: LedgerGround) => ground.answer.accounts[account] ?? account

export const rowTitle = (row: BandedRow, ground: LedgerGround) => {
  const process = ground.answer.processes.find((known) => known.process === row.process)?.title ?? row.process
  return row.instance ? `${process} (${row.instance})` : process
}

function inMilligrams(name: string, amount: Amount, river: River, derivation: Derivation): ComputedFigure {
  return {
    name,
    value: asMilligrams(amount.amount_umol, river.atom),
    low: asMilligrams(amount.low_umol, river.atom),
    high: asMilligrams(amount.high_umol, river.atom),
    unit: `mg ${river.atom}`,
    derivation,
  }
}

function derivationOfRows(
  rows: readonly BandedRow[],
  amount: Amount,
  river: River,
  ground: LedgerGround,
): Derivation {
  const processes = ground.answer.processes.filter((process) =>
    rows.some((row) => row.process === process.process),
  )
  const facts = new Map(processes.flatMap((process) => process.facts).map((fact) => [fact.id, fact]))
  const sumOf = rows.map((row) => umol(row.amount_umol, river)).join(' + ')
  return {
    says: [...processes.map((process) => process.says), overMembers(ground)].join(' '),
    steps: [
      ...processes.map((process) => ({ formula: `${process.title}: ${process.formula}`, withValues: '' })),
      ...(rows.length > 1
        ? [
            {
              formula: `sum over ${rows.map((row) => rowTitle(row, ground)).join(', ')}`,
              withValues: `${umol(amount.amount_umol, river)} = ${sumOf}`,
            },
          ]
        : []),
      conversion(amount, river),
    ],
    facts: [...facts.values()],
    entries: entriesBehind(rows, ground),
  }
}

const conversion = (amount: Amount, river: River) => ({
  formula: `mass = amount × molar mass of ${river.atom}`,
  withValues: `${milligrams(amount.amount_umol, river)} = ${umol(amount.amount_umol, river)} × ${atomicMass[river.atom]} g/mol ÷ 1000`,
})

const overMembers = ({ answer }: LedgerGround) =>
  `Summed over the span in ${answer.members} simulated tanks that fit your log; the figure is their median.`

const umol = (amount: number, river: River) => `${plain(amount)} µmol ${river.atom}`
const milligrams = (amount: number, river: River) =>
  `${plain(asMilligrams(amount, river.atom))} mg ${river.atom}`

const eventOfAccount: Readonly<Record<string, string>> = {
  'outside.discarded-water': 'water change',
  'outside.source-water': 'water change',
  'outside.salt': 'water change',
  'outside.hand-removed': 'hand removal',
  'outside.spent-media': 'media removed',
  'outside.dose': 'dose',
  'outside.feed': 'feed change',
}

/** Entries that moved these atoms; where no entry did, the readings by which the members were weighed. */
function entriesBehind(rows: readonly BandedRow[], { answer, data }: LedgerGround): readonly LogEntry[] {
  const kinds = new Set(rows.flatMap((row) => [eventOfAccount[row.from], eventOfAccount[row.to]]))
  const { from, to } = answer.ledger
  const ids = new Set(
    data.events
      .filter((event) => kinds.has(event.kind) && event.day >= from && event.day <= to)
      .map((event) => event.entry),
  )
  const moved = data.entries.filter((entry) => ids.has(entry.id))
  return moved.length > 0 ? moved : weighing(data)
}

function weighing(data: SystemData): readonly LogEntry[] {
  const ids = new Set(
    data.observations.filter((reading) => reading.day <= data.asOf).map((reading) => reading.entry),
  )
  return data.entries.filter((entry) => ids.has(entry.id))
}
