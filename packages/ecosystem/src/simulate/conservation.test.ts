import { describe, expect, test } from 'vitest'
import type { System } from '../system.ts'
import { atoms, belowZero, drift } from '../testing/drift.ts'
import { mostGround } from '../testing/ground.ts'
import { equippedSystem } from '../testing/ordinary.ts'
import { run } from '../testing/run.ts'
import { reef, reefYear } from '../testing/systems.ts'

/** Days a week and a bit apart, most of them inside a step. */
const weekly = (days: number): readonly number[] => [
  ...Array.from({ length: Math.ceil(days / 7.3) }, (_, week) => week * 7.3),
  days,
]

const isEquipment = (kind: string) => (item: { readonly kind: string }) => item.kind === kind

/** The reef without some of its parts. */
function reefOf(parts: Readonly<Record<string, boolean>>): System {
  const { sand, ...rest } = reef
  return {
    ...rest,
    ...(parts.sand && sand ? { sand } : {}),
    rock: parts.rock ? reef.rock : [],
    animals: reef.animals.filter(({ role }) => (role === 'fish' ? parts.fish : parts.algae)),
    algae: parts.algae ? reef.algae : [],
    equipment: reef.equipment.filter(
      (item) =>
        (parts.skimmer || !isEquipment('skimmer')(item)) &&
        (parts.media || !isEquipment('ferric media reactor')(item)),
    ),
  }
}

const optional = ['fish', 'skimmer', 'media', 'algae', 'rock', 'sand'] as const
const combinations = Array.from({ length: 2 ** optional.length }, (_, number) =>
  Object.fromEntries(optional.map((part, bit) => [part, ((number >> bit) & 1) === 1])),
)
const nameOf = (parts: Readonly<Record<string, boolean>>): string =>
  optional.filter((part) => parts[part]).join(', ') || 'water alone'

describe('a year with everything on', () => {
  const hourly = Array.from({ length: 365 * 24 + 1 }, (_, hour) => hour / 24)
  const year = run({ system: reef, days: 365, events: reefYear, samples: hourly, marks: weekly(365) })

  test.each(atoms)('loses and makes no %s, inside and outside together', (atom) => {
    expect(drift(year, atom)).toBeLessThan(1e-9)
  })

  test('no account inside is ever below zero at any hour', () => {
    expect(belowZero(year)).toEqual([])
  })

  test('no ground is covered twice at any hour, but for what the error control allows', () => {
    expect(mostGround(year)).toBeLessThanOrEqual(1 + 1e-4)
  })

  test('flows have to be limited in fewer than one step in a thousand', () => {
    expect(year.statistics.limited).toBeLessThan(year.statistics.steps / 1000)
  })

  test('what the ledger says flowed into an account is what the account gained', () => {
    for (const { account, atom, start_umol, end_umol } of year.ledger.balances) {
      const rows = year.ledger.rows.filter((row) => row.atom === atom)
      const gained = rows.reduce(
        (sum, { from, to, amount_umol }) =>
          sum + (to === account ? amount_umol : 0) - (from === account ? amount_umol : 0),
        0,
      )
      const through = rows.reduce(
        (sum, { from, to, amount_umol }) =>
          sum + (to === account || from === account ? Math.abs(amount_umol) : 0),
        0,
      )
      expect(Math.abs(end_umol - start_umol - gained)).toBeLessThanOrEqual(1e-9 * Math.max(through, 1))
    }
  })
})

describe('every combination of parts conserves every atom', () => {
  test.each(combinations.map((parts) => [nameOf(parts), parts] as const))('%s', (_, parts) => {
    const outcome = run({ system: reefOf(parts), days: 60, events: reefYear, marks: weekly(60) })
    for (const atom of atoms) expect(drift(outcome, atom)).toBeLessThan(1e-9)
    expect(outcome.statistics.limited).toBeLessThanOrEqual(outcome.statistics.steps / 1000)
  })
})

// Ten here, and two with a binder whose solid empties fast; two hundred in `npm run validate`.
describe('a system with a drawn part of all equipment conserves every atom and goes nowhere below zero', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 14, 159])('draw %i', (number) => {
    const outcome = run({ system: equippedSystem(number), days: 40, marks: weekly(40) })
    for (const atom of atoms) expect(drift(outcome, atom)).toBeLessThan(1e-9)
    expect(belowZero(outcome)).toEqual([])
    expect(outcome.statistics.limited).toBeLessThanOrEqual(outcome.statistics.steps / 1000)
  })
})
