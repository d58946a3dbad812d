import { type Atom, border, type Ledger, type LedgerRow, type Source } from '@holdfast/ecosystem'
import { molarMass } from '@holdfast/quantities'

/** What came in over the span and what gave to the water, mg a day. */
export interface Books {
  readonly inputs: ReadonlyMap<Source, number>
  /** All that came in for the living to use, what rock gave back with it. */
  readonly total: number
  /** What left rock for the water, less what it took up: leaching of what died in it, and phosphate that was bound. */
  readonly fromRock: number
  readonly fromBed: number
  readonly fromFilters: number
  /** In bodies that stayed in the tank. */
  readonly fromBodies: number
}

/** The books of one atom. */
export function booksOf(ledger: Ledger, atom: Atom): Books {
  const perDay = molarMass(atom) / 1000 / (ledger.to - ledger.from)
  const rows = ledger.rows.filter((row) => row.atom === atom)
  const sum = (holds: (row: LedgerRow) => boolean): number =>
    perDay * rows.filter(holds).reduce((all, { amount_umol }) => all + amount_umol, 0)
  const inputs = new Map([...border(ledger, atom).inputs].map(([name, amount]) => [name, perDay * amount]))
  const leaves = (start: string): number =>
    sum(({ from, to }) => from.startsWith(start) && isFree(to)) -
    sum(({ from, to }) => isFree(from) && to.startsWith(start))
  const fromRock = rockStores.reduce((all, one) => all + leaves(one), 0)
  return {
    inputs,
    total: brought.reduce((all, name) => all + (inputs.get(name) ?? 0), Math.max(0, fromRock)),
    fromRock,
    fromBed: leaves('cultivated.refugium'),
    fromFilters: sum(({ from, to }) => from.startsWith('filter.') && isFree(to)),
    fromBodies: sum(({ process, to }) => process === 'animals lost' && to.startsWith('bed.')),
  }
}

/** Neither gas nor what rock holds on the day it is placed: both count when they reach the water. */
const brought: readonly Source[] = ['feed', 'source_water', 'salt', 'dose', 'animals_added']
const rockStores = ['rock.buried', 'rock.exchangeable', 'rock.sorbed']

const isFree = (account: string): boolean => account.startsWith('water.') || account.startsWith('bed.')
