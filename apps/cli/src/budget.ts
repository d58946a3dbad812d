import { type Atom, type Border, border, type Export, type Ledger, type Source } from '@holdfast/ecosystem'
import { type BandedLedger, weightedQuantiles } from '@holdfast/inference'
import { molarMass } from '@holdfast/quantities'

/** One line of a budget; the ends are those of a 90 % interval. Keys are those of the JSON. */
export interface Line<Name extends string = string> {
  readonly name: Name
  readonly mg_per_day: number
  readonly mg_per_day_low: number
  readonly mg_per_day_high: number
  /** Share of all inputs of the atom; null where nothing came in. */
  readonly share_of_inputs: number | null
}

type Exported = Exclude<Export, 'unexplained'> | 'not_explained_yet'

/** What crossed the border of a system, of one atom: inputs_total = exports_total + stored. */
export interface Budget {
  readonly inputs: readonly Line<Source>[]
  /** What left, `not_explained_yet` among it. */
  readonly exports: readonly Line<Exported>[]
  readonly stored: Line<'stored'>
  readonly inputs_total: Line<'inputs_total'>
  readonly exports_total: Line<'exports_total'>
}

/** The budget of an atom over the span of a ledger; the ends of an interval are over the members' own budgets. */
export function budget(ledger: BandedLedger, atom: Atom): Budget {
  const mean = border(ledger, atom)
  const each = ledger.weights.map((_, member) => border(bookOf(ledger, member), atom))
  const days = ledger.to - ledger.from
  const perDay = (amount_umol: number): number => (amount_umol * molarMass(atom)) / 1000 / days
  const all = total(mean.inputs)
  const line = <Name extends string>(name: Name, of: (border: Border) => number): Line<Name> => {
    const [low, high] = weightedQuantiles(each.map(of), ledger.weights, [0.05, 0.95])
    return {
      name,
      mg_per_day: perDay(of(mean)),
      mg_per_day_low: perDay(low),
      mg_per_day_high: perDay(high),
      share_of_inputs: all > 0 ? of(mean) / all : null,
    }
  }
  return {
    inputs: [...mean.inputs.keys()].map((name) => line(name, ({ inputs }) => inputs.get(name) ?? 0)),
    exports: [...mean.exports.keys()].map((name) =>
      line(name === 'unexplained' ? 'not_explained_yet' : name, ({ exports }) => exports.get(name) ?? 0),
    ),
    stored: line('stored', ({ stored }) => stored),
    inputs_total: line('inputs_total', ({ inputs }) => total(inputs)),
    exports_total: line('exports_total', ({ exports }) => total(exports)),
  }
}

/** The books of one member. */
function bookOf(ledger: BandedLedger, member: number): Ledger {
  return {
    ...ledger,
    rows: ledger.rows.map((row) => ({ ...row, amount_umol: row.members[member] ?? 0 })),
    balances: ledger.balances.map((balance) => ({
      ...balance,
      end_umol: balance.start_umol + (balance.changes[member] ?? 0),
    })),
  }
}

const total = (amounts: ReadonlyMap<string, number>): number =>
  [...amounts.values()].reduce((sum, amount) => sum + amount, 0)
