import { named } from '@holdfast/facts/names'
import type { Summed } from '@holdfast/inference/summed'
import { asMilligrams, atomicMass } from '../../figure/atoms.ts'
import type { Derivation } from '../../figure/computed.ts'
import { entriesOfAll, weighing } from '../../figure/entry-ids.ts'
import { plain } from '../../figure/numbers.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { BandedRow, LedgerAnswer } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import type { Basin, River } from './streams.ts'

/** What the figures of one ledger are derived from. */
export interface LedgerGround {
  readonly answer: LedgerAnswer
  readonly data: SystemData
}

export function derivationOfRows(
  rows: readonly BandedRow[],
  amount: Summed,
  river: River,
  ground: LedgerGround,
): Derivation {
  const processes = ground.answer.processes
    .filter((known) => rows.some((row) => row.process === known.process && row.instance === known.instance))
    .map((known) => ({
      ...known,
      formulas: known.formulas.filter(({ moves }) => moves === undefined || moves.includes(river.atom)),
    }))
  const addends = byTitle(rows, ground)
  const sum = {
    formula: `sum over ${addends.map(([title]) => title).join(', ')}`,
    withValues: `${umol(amount.amount_umol, river)} = ${addends.map(([, part]) => umol(part, river)).join(' + ')}`,
  }
  return {
    says: overMembers(ground),
    steps: [...(addends.length > 1 ? [sum] : []), conversion(amount, river)],
    processes,
    facts: [],
    entries: entriesBehind(rows, ground),
  }
}

export function derivationOfBasin(basin: Basin, river: River, ground: LedgerGround): Derivation {
  const steps = basin.balances.map(({ account, start_umol, end_umol }) => ({
    formula: `change of ${titleOf(account, ground)} = end − start`,
    withValues: `${umol(end_umol - start_umol, river)} = ${umol(end_umol, river)} − ${umol(start_umol, river)}`,
  }))
  return {
    says: overMembers(ground),
    steps: [...steps, conversion(basin, river)],
    processes: [],
    facts: [],
    entries: weighing(ground.data),
  }
}

export const titleOf = (account: string, ground: LedgerGround) => ground.answer.accounts[account] ?? account

export const rowTitle = ({ process, instance }: BandedRow, ground: LedgerGround) => {
  const title = ground.answer.processes.find((known) => known.process === process)?.title ?? process
  return instance ? `${title} (${named(instance)})` : title
}

/** What each process moves, the most first: one that takes from several accounts is one addend. */
function byTitle(rows: readonly BandedRow[], ground: LedgerGround): readonly (readonly [string, number])[] {
  const sums = new Map<string, number>()
  for (const row of rows) {
    const title = rowTitle(row, ground)
    sums.set(title, (sums.get(title) ?? 0) + row.amount_umol)
  }
  return [...sums].sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))
}

export const milligrams = (amount: number, { atom }: River) =>
  `${plain(asMilligrams(amount, atom))} mg ${atom}`

const umol = (amount: number, { atom }: River) => `${plain(amount)} µmol ${atom}`

const conversion = (amount: Summed, river: River) => ({
  formula: `mass = amount × molar mass of ${river.atom}`,
  withValues: `${milligrams(amount.amount_umol, river)} = ${umol(amount.amount_umol, river)} × ${atomicMass[river.atom]} g/mol ÷ 1000`,
})

const overMembers = ({ answer, data }: LedgerGround) =>
  `Summed from ${dayText(answer.ledger.from, data.system.timeZone)} to ${dayText(answer.ledger.to, data.system.timeZone)} in ${answer.members} simulated tanks, weighed by how well they meet your readings; the figure is their mean.`

/** Kinds of events that make a process move atoms, where they do not bear its name. */
const eventsOfProcess: Readonly<Record<string, readonly string[]>> = {
  feeding: ['feed change'],
  'carbon removed': ['media removed'],
  'crew arrives': ['animals added'],
  'crew leaves': ['animals lost', 'animals moved'],
  'dead matter arrives': ['rock added'],
  'exchangeable phosphate arrives': ['rock added'],
  'nitrifiers arrive': ['rock added'],
}

/** Entries that moved these atoms; where no entry did, the readings by which the members were weighed. */
function entriesBehind(rows: readonly BandedRow[], { answer, data }: LedgerGround): readonly string[] {
  const kinds = new Set<string>(rows.flatMap(({ process }) => eventsOfProcess[process] ?? [process]))
  const { from, to } = answer.ledger
  const moved = entriesOfAll(
    data.events.filter((event) => kinds.has(event.kind) && event.day >= from && event.day <= to),
  )
  return moved.length > 0 ? moved : weighing(data)
}
