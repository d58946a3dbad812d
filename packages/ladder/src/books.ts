import { middle, type Present } from '@holdfast/crew-plan'
import {
  type Atom,
  border,
  type Ledger,
  type LedgerRow,
  ledger,
  type Source,
  simulate,
} from '@holdfast/ecosystem'
import { molarMass } from '@holdfast/quantities'

/** What comes in and what gives to the water while husbandry goes on as it is, mg a day. */
export interface Books {
  readonly inputs: ReadonlyMap<Source, number>
  /** All that comes in for the living to use, what rock gave back with it. */
  readonly total: number
  /** What left rock for the water, less what it took up: leaching of what died in it, and phosphate that was bound. */
  readonly fromRock: number
  readonly fromBed: number
  readonly fromFilters: number
}

/** Days of the books ahead: long enough for a round of most routines. */
const booked = 28
/** Days after which hunger is looked at. */
const fedFor = 60

/** The coming months with husbandry unchanged in each of the worlds that the system may be: ledger, and how it ends. */
export function monthsAhead({ model, worlds, day, routine }: Present): {
  readonly ledgers: readonly Ledger[]
  readonly ends: readonly Float64Array[]
} {
  const to = day + fedFor
  const timeline = routine(to)
  const marks = [day, day + booked]
  const runs = worlds.map(({ parameters, states: start, settings }) =>
    simulate({ model, parameters, start, settings, from: day, to, timeline, marks }),
  )
  return {
    ledgers: runs.map((run) => ledger(model, run.marks[0], run.marks[1])),
    ends: runs.map(({ end }) => end),
  }
}

/** The books of one atom, by the middle of the worlds. */
export function booksOf(present: Present, ledgers: readonly Ledger[], atom: Atom): Books {
  const each = ledgers.map((one) => booksIn(one, atom))
  const of = (read: (books: Books) => number): number => middle(present, (w) => read(each[w]))
  return {
    inputs: new Map(brought.map((name) => [name, of(({ inputs }) => inputs.get(name) ?? 0)])),
    total: of(({ total }) => total),
    fromRock: of(({ fromRock }) => fromRock),
    fromBed: of(({ fromBed }) => fromBed),
    fromFilters: of(({ fromFilters }) => fromFilters),
  }
}

function booksIn(book: Ledger, atom: Atom): Books {
  const perDay = molarMass(atom) / 1000 / (book.to - book.from)
  const rows = book.rows.filter((row) => row.atom === atom)
  const sum = (holds: (row: LedgerRow) => boolean): number =>
    perDay * rows.filter(holds).reduce((all, { amount_umol }) => all + amount_umol, 0)
  const inputs = new Map([...border(book, atom).inputs].map(([name, amount]) => [name, perDay * amount]))
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
  }
}

/** Neither gas nor what rock holds on the day it is placed: both count when they reach the water. */
const brought: readonly Source[] = ['feed', 'source_water', 'salt', 'dose', 'animals_added']
const rockStores = ['rock.buried', 'rock.exchangeable', 'rock.sorbed']

const isFree = (account: string): boolean => account.startsWith('water.') || account.startsWith('bed.')
