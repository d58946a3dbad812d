import fc from 'fast-check'
import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import { observationsAndEvents } from '../observations-and-events.ts'
import type { Entry, Stored } from './entry.ts'
import { factsAt } from './facts-at.ts'
import { journal } from './journal.ts'
import { readEntry } from './read-entry.ts'
import systemSample from './samples/system.v1.json' with { type: 'json' }
import { standing } from './standing.ts'
import { systemAt } from './system-at.ts'

/** What one device does next: it may only speak of what it has seen or made itself. */
interface Deed {
  readonly device: number
  readonly what:
    | 'reading'
    | 'correct'
    | 'undo'
    | 'undo batch'
    | 'undo the undo'
    | 'describe'
    | 'mend'
    | 'own fact'
  /** Which of the entries so far it speaks of. */
  readonly of: number
  readonly day: number
}

const deeds = fc.array(
  fc.record({
    device: fc.nat(2),
    what: fc.constantFrom<Deed['what']>(
      ...(['reading', 'reading', 'correct', 'correct', 'undo', 'undo batch', 'undo the undo'] as const),
      ...(['describe', 'mend', 'own fact'] as const),
    ),
    of: fc.nat(40),
    day: fc.integer({ min: 1, max: 9 }),
  }),
  { minLength: 1, maxLength: 25 },
)

const described = readEntry(systemSample)
if (!described.ok || described.entry.kind !== 'system') throw new Error('sample not read')
const { system } = described.entry.body
/** Clocks of the three devices: a year behind, right, and ten years ahead. */
const clocks = ['2025-01-04T00:00:00Z', '2026-01-04T00:00:00Z', '2036-01-04T00:00:00Z']

/** The entries that the deeds make; those with `oneCorrection` correct no entry twice and say no day twice. */
function entriesOf(all: readonly Deed[], oneCorrection: boolean): readonly Entry[] {
  const made: Entry[] = []
  const taken = new Set<string>()
  for (const [place, { device, what, of, day }] of all.entries()) {
    const own = {
      device: `device ${device}`,
      madeAt: clocks[device],
      at: `2026-01-0${day}`,
      batch: `batch ${of % 3}`,
    }
    const base = nitrate(place + 1, own)
    const pick = (fits: (entry: Entry) => boolean): Entry | undefined => {
      const fitting = made.filter(fits)
      return fitting[of % Math.max(1, fitting.length)]
    }
    // Two devices that tell the same of one day contradict each other as two corrections do.
    const once = (key: string): boolean => !oneCorrection || (!taken.has(key) && taken.add(key).has(key))
    const push = (entry: Entry | undefined): void => void (entry && made.push(entry))
    if (what === 'reading') push(base)
    else if (what === 'correct') {
      const target = pick(({ kind }) => kind === 'reading')
      if (target && once(target.id)) push({ ...base, replaces: target.id })
    } else if (what === 'describe' || what === 'mend') {
      const tells = what === 'mend' ? 'mend' : 'change'
      const target = what === 'mend' && of % 2 === 0 ? pick(({ kind }) => kind === 'system') : undefined
      const body = { tells, document: {}, system: { ...system, temperature_C: 20 + place / 10 } } as const
      const key = target === undefined ? `${tells} ${day}` : target.id
      if (once(key)) push({ ...base, kind: 'system', body, ...(target && { replaces: target.id }) })
    } else if (what === 'own fact') {
      const body = {
        fact: 'foam.k.tank',
        low: 1,
        typical: 2 + place,
        high: 99,
        unit: 'd⁻¹',
        reason: 'measured',
      }
      if (once(`fact ${day}`)) push({ ...base, kind: 'fact-override', body })
    } else {
      const target = pick(({ kind }) => (kind === 'retraction') === (what === 'undo the undo'))
      const { batch: _, ...undo } = base
      const body = what === 'undo batch' ? ({ of: 'batch', id: `batch ${of % 3}` } as const) : undefined
      if (body) push({ ...undo, kind: 'retraction', body })
      else if (target) push({ ...undo, kind: 'retraction', body: { of: 'entry', id: target.id } })
    }
  }
  return made
}

/** Entries received one after the other in an order; the store's clock alone tells when. */
const received = (entries: readonly Entry[]): readonly Stored[] =>
  entries.map((entry, place) => ({
    ...entry,
    knownAt: new Date(1_770_000_000_000 + 1000 * place).toISOString(),
  }))

const later = '2099-01-01T00:00:00.000Z'
const days = Array.from({ length: 9 }, (_, day) => `2026-01-0${day + 1}`)

/** All that a log says, without the order in which it came. */
function stateOf(log: readonly Stored[]): unknown {
  const { observations, notUsed } = observationsAndEvents(log, 'Europe/Berlin')
  return {
    stand: standing(log)
      .map(({ id }) => id)
      .toSorted(),
    fates: journal(log)
      .map(({ entry, state, by, rivals }) => [entry.id, state, by, rivals.toSorted()])
      .toSorted(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
    systems: days.map((day) => systemAt(log, day, later)?.temperature_C),
    facts: days.map((day) => factsAt(log, day, later).get('foam.k.tank')?.typical),
    observations: observations.map(({ day, value, entry }) => [day, value, entry]).toSorted(),
    notUsed: notUsed.map(({ entry }) => entry).toSorted(),
  }
}

const shuffled = (oneCorrection: boolean) =>
  deeds
    .map((all) => entriesOf(all, oneCorrection))
    .chain((entries) =>
      fc.tuple(
        fc.constant(entries),
        fc.shuffledSubarray([...entries], { minLength: entries.length, maxLength: entries.length }),
      ),
    )

test('entries of three devices with wrong clocks give the same state in any order of arrival', () => {
  fc.assert(
    fc.property(shuffled(true), ([made, arrived]) => {
      expect(stateOf(received(arrived))).toEqual(stateOf(received(made)))
    }),
  )
})

test('of rival corrections the later received holds and the others are named; all else is the same', () => {
  fc.assert(
    fc.property(shuffled(false), ([, arrived]) => {
      const log = received(arrived)
      const place = new Map(log.map(({ id }, index) => [id, index]))
      const lines = new Map(journal(log).map((line) => [line.entry.id, line]))
      const goneIn = (entries: readonly Stored[]): readonly string[] =>
        journal(entries)
          .flatMap(({ entry, state }) => (state === 'taken back' ? [entry.id] : []))
          .toSorted()
      // What is taken back hangs on no order at all.
      expect(goneIn(received(arrived.toReversed()))).toEqual(goneIn(log))
      for (const [id, { entry, state, rivals }] of lines) {
        if (entry.replaces === undefined || entry.kind === 'system' || state === 'taken back') continue
        const beside = log.filter(
          (one) => one.replaces === entry.replaces && one.id !== id && one.kind !== 'retraction',
        )
        const present = beside.filter((one) => lines.get(one.id)?.state !== 'taken back').map((one) => one.id)
        expect(rivals.toSorted()).toEqual(present.toSorted())
        const isLast = present.every((other) => Number(place.get(other)) < Number(place.get(id)))
        if (!isLast) expect(state).toBe('corrected')
      }
    }),
  )
})

test('of every line of corrections exactly one entry stands, unless all of it was taken back', () => {
  fc.assert(
    fc.property(shuffled(false), ([, arrived]) => {
      const log = received(arrived)
      const byId = new Map(log.map((entry) => [entry.id, entry]))
      const firstOf = (entry: Stored): string => {
        const before = entry.replaces === undefined ? undefined : byId.get(entry.replaces)
        return before === undefined ? entry.id : firstOf(before)
      }
      const stand = standing(log).map(firstOf)
      const alive = journal(log).flatMap(({ entry, state }) =>
        state === 'taken back' ? [] : [firstOf(entry)],
      )
      expect(stand.toSorted()).toEqual([...new Set(alive)].toSorted())
    }),
  )
})
