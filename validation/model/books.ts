/** The ledger of a case over a span, by the names of the cases. */
import { border, type Ledger, type LedgerRow } from '@holdfast/ecosystem'
import { ledgerOf } from '@holdfast/inference'
import { molarMass } from '@holdfast/quantities'
import { noon } from '../calendar.ts'
import type { CaseFile } from '../case-file.ts'
import type { Atom, Budget } from '../model-answers.ts'
import { keyOf, questionOf } from './past-of-case.ts'

const books = new Map<string, Ledger>()

function bookOf(file: CaseFile, from: string, to: string): Ledger {
  const key = `${from} ${to} ${keyOf(file)}`
  const known = books.get(key)
  if (known !== undefined) return known
  const { ledger } = ledgerOf(questionOf(file), { from: noon(from), to: noon(to) })
  books.set(key, ledger)
  return ledger
}

export function budget(file: CaseFile, atom: Atom, from: string, to: string): Budget {
  const book = bookOf(file, from, to)
  const rows = book.rows.filter((row) => row.atom === atom)
  const mg = (umol: number) => (umol * molarMass(atom)) / 1000
  const { inputs, exports } = border(book, atom)
  const inMg = (amounts: ReadonlyMap<string, number>) =>
    new Map([...amounts].map(([name, amount]) => [name, mg(amount)] as const))
  return {
    days: book.to - book.from,
    inputs: inMg(inputs),
    exports: inMg(exports),
    toWater: inMg(sums(rows.filter(givesToWater), ({ from: account }) => sourceName(account))),
    netToWater: inMg(netToWater(rows)),
    stored: stored(book, atom, mg),
    nitrateTaken: inMg(
      sums(
        rows.filter((row) => row.from === 'water.nitrate' && !row.to.startsWith('water.')),
        ({ process }) => processNames[process] ?? process,
      ),
    ),
  }
}

/** Processes of the model by the names of the cases. */
const processNames: Readonly<Record<string, string>> = {
  'foam-fractionation': 'foam',
  'water change': 'water_change',
  'ferric-media': 'ferric_media',
  'hand removal': 'hand_removed_algae',
  'algal-uptake': 'surface_algae',
  'algal-growth': 'surface_algae',
  'algal-growth-of-films': 'surface_algae',
  'algal-growth-of-diatoms': 'surface_algae',
  'algal-growth-of-crusts': 'surface_algae',
  'bed-growth': 'refugium_algae',
  'coral-uptake': 'corals',
  denitrification: 'air',
  'denitrifying-reactor': 'air',
  'bacterial-growth': 'organic_carbon_dosing',
}

/** What is dissolved; particles and cells adrift are not. */
function isDissolved(account: string): boolean {
  return account.startsWith('water.') && account !== 'water.particles' && account !== 'water.bacteria'
}

function givesToWater({ from, to, amount_umol }: LedgerRow): boolean {
  return isDissolved(to) && !isDissolved(from) && amount_umol > 0
}

const sourceNames: readonly (readonly [string, string])[] = [
  ['outside.feed', 'feed'],
  ['outside.source-water', 'source_water'],
  ['outside.salt', 'salt'],
  ['outside.dose', 'dose'],
  ['rock.sorbed', 'rock_desorption'],
  ['rock.buried', 'rock_leaching'],
  ['rock.exchangeable', 'rock_leaching'],
  ['rock.', 'nitrifiers'],
  ['outside.air', 'air'],
  ['filter.', 'mechanical_filter'],
  ['water.bacteria', 'bacteria'],
  ['bed.', 'detritus'],
  ['water.particles', 'detritus'],
  ['animals.corals', 'corals'],
  ['animals.', 'animals'],
  ['surface.', 'surface_algae'],
  ['cultivated.refugium', 'refugium_algae'],
  ['cultivated.', 'scrubber_algae'],
  ['media.', 'ferric_media'],
]

function sourceName(account: string): string {
  return sourceNames.find(([start]) => account.startsWith(start))?.[1] ?? account
}

/** Accounts inside by the names of the cases, and what of the model they are. */
const accounts: Readonly<Record<string, (account: string) => boolean>> = {
  water: isDissolved,
  dissolved: isDissolved,
  ammonia: (account) => account === 'water.ammonia',
  nitrite: (account) => account === 'water.nitrite',
  nitrate: (account) => account === 'water.nitrate',
  phosphate: (account) => account === 'water.phosphate',
  rock: (account) => account.startsWith('rock.'),
  sand: (account) => account.startsWith('rock.'),
  nitrifiers: (account) => account.startsWith('rock.') && account.includes('oxidisers'),
  detritus: (account) => account.startsWith('bed.') || account === 'water.particles',
  animals: (account) => account.startsWith('animals.'),
  fish: (account) => account === 'animals.fish',
  corals: (account) => account === 'animals.corals',
  algae: (account) => account.startsWith('surface.'),
  surface_algae: (account) => account.startsWith('surface.'),
  refugium_algae: (account) => account.startsWith('cultivated.refugium'),
  scrubber_algae: (account) => account.startsWith('cultivated.turf scrubber'),
  bacteria: (account) => account === 'water.bacteria',
  mechanical_filter: (account) => account.startsWith('filter.'),
  rock_leaching: (account) => account === 'rock.buried' || account === 'rock.exchangeable',
  activated_carbon: (account) => account === 'media.carbon',
  media: (account) => account.startsWith('media.'),
  ferric_media: (account) => account === 'media.ferric',
}

function netToWater(rows: readonly LedgerRow[]): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(accounts).map(([name, holds]) => {
      const given = rows.filter(({ from, to }) => holds(from) && isDissolved(to))
      const taken = rows.filter(({ from, to }) => isDissolved(from) && holds(to))
      return [name, total(given) - total(taken)]
    }),
  )
}

function stored(book: Ledger, atom: Atom, mg: (umol: number) => number): Budget['stored'] {
  return new Map(
    Object.entries(accounts).map(([name, holds]) => {
      const balances = book.balances.filter((one) => one.atom === atom && holds(one.account))
      const start = balances.reduce((sum, { start_umol }) => sum + start_umol, 0)
      const end = balances.reduce((sum, { end_umol }) => sum + end_umol, 0)
      return [name, { start_mg: mg(start), change_mg: mg(end - start) }]
    }),
  )
}

function sums(rows: readonly LedgerRow[], name: (row: LedgerRow) => string): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  for (const row of rows) found.set(name(row), (found.get(name(row)) ?? 0) + row.amount_umol)
  return found
}

function total(rows: readonly LedgerRow[]): number {
  return rows.reduce((sum, { amount_umol }) => sum + amount_umol, 0)
}
