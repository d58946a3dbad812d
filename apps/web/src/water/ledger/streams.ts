import type { Atom } from '@holdfast/ecosystem'
import { type Summed, sumOfChanges, sumOfRows } from '@holdfast/inference/summed'
import type { Balance, BandedLedger, BandedRow } from '../../worker/answers.ts'
import {
  basinOf,
  basins,
  exports,
  isOutside,
  type KeptPlaces,
  type Place,
  placeOf,
  sources,
} from './places.ts'

/** All that crossed the edge of the system to or from one account outside it. */
export interface Stream extends Summed {
  readonly place: Place
  readonly rows: readonly BandedRow[]
}

/** What a part of the system holds more (or, below zero, less) at the end of the span. */
export interface Basin extends Summed {
  readonly place: Place
  readonly balances: readonly Balance[]
}

/** Atoms that have a picture; only they claim places in it. */
export const pictured: readonly Atom[] = ['N', 'P']

export interface River {
  readonly atom: Atom
  readonly sources: readonly Stream[]
  readonly exports: readonly Stream[]
  readonly basins: readonly Basin[]
  /** What was fed, µmol; the width of all streams is a share of it. Where nothing was fed: all that came in. */
  readonly fed_umol: number
}

const none: KeptPlaces = { from: [], to: [] }

/**
 * The ledger as streams across the edge of the system. A place is kept for every account that any atom
 * uses, so that the pictures of N and P have the same places.
 */
export function riverOf(ledger: BandedLedger, atom: Atom, kept: KeptPlaces = none): River {
  const crossing = ledger.rows
    .map(forward)
    .filter((row) => pictured.includes(row.atom) && isOutside(row.from) !== isOutside(row.to))
  const rows = crossing.filter((row) => row.atom === atom)
  const streams = (side: 'from' | 'to', places: readonly Place[]) =>
    inOrder(places, [...kept[side], ...crossing.map((row) => row[side]).filter(isOutside)]).map((place) => {
      const own = rows.filter((row) => row[side] === place.account)
      return { place, rows: own, ...sumOfRows(own, ledger.weights) }
    })
  const incoming = streams('from', sources)
  const fed = incoming.find((stream) => stream.place.account === 'outside.feed')?.amount_umol ?? 0
  return {
    atom,
    sources: incoming,
    exports: streams('to', exports),
    basins: basinsOf(ledger, atom),
    fed_umol: fed > 0 ? fed : incoming.reduce((sum, stream) => sum + stream.amount_umol, 0),
  }
}

/** A process that goes both ways gives its net; where that ran backwards, it is told forwards. */
export function forward(row: BandedRow): BandedRow {
  if (row.amount_umol >= 0) return row
  const { from, to, amount_umol, low_umol, high_umol, members } = row
  return {
    ...row,
    from: to,
    to: from,
    amount_umol: -amount_umol,
    low_umol: -high_umol,
    high_umol: -low_umol,
    members: members.map((amount) => -amount),
  }
}

function basinsOf(ledger: BandedLedger, atom: Atom): Basin[] {
  const inside = ledger.balances.filter(
    ({ account, atom: held }) => pictured.includes(held) && !isOutside(account),
  )
  return inOrder(
    basins,
    inside.map((balance) => basinOf(balance.account)),
  ).map((place) => {
    const own = inside.filter(
      (balance) => balance.atom === atom && basinOf(balance.account) === place.account,
    )
    return {
      place,
      balances: own,
      ...sumOfChanges(own, ledger.weights),
    }
  })
}

/** Known places in their order, then those that no list names, by id. */
function inOrder(places: readonly Place[], accounts: readonly string[]): Place[] {
  const present = new Set(accounts)
  const known = places.filter((place) => present.has(place.account))
  const strange = [...present].filter((account) => !places.some((place) => place.account === account)).sort()
  return [...known, ...strange.map((account) => placeOf(places, account))]
}
