import { expect, test } from 'vitest'
import type { Event } from '../log.ts'
import { ferricMassSetting } from '../processes/ferric-media.ts'
import type { Equipment } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'
import { timeline } from './timeline.ts'

const changed = (day: number, equipment: string, changes: Readonly<Record<string, unknown>>): Event => ({
  day,
  kind: 'equipment change',
  equipment,
  changes,
})

/** Days and litres of the water changes that happen. */
function waterChanges(equipment: Equipment, events: readonly Event[], asOf = 40) {
  const moments = timeline({ system: { ...box, equipment: [equipment] }, events, from: 0, to: 40, asOf })
  return moments.flatMap((moment) =>
    'happens' in moment && moment.happens === 'water change'
      ? [[moment.day, ...Object.values(moment.with)]]
      : [],
  )
}

const routine = { kind: 'water change', volume_L: 10, every_days: 10 } as const

test('a routine of water changes takes the volume and the interval that the log gives it', () => {
  expect(waterChanges(routine, [])).toEqual([
    [10, 10],
    [20, 10],
    [30, 10],
  ])
  const events = [
    changed(15, routine.kind, { every_days: 5 }),
    changed(22, routine.kind, { volume_L: 4 }),
    changed(31, routine.kind, { every_days: 60 }),
  ]
  expect(waterChanges(routine, events)).toEqual([
    [10, 10],
    [20, 10],
    [25, 4],
    [30, 4],
  ])
})

test('a routine begins on its first day, and its rhythm passes through it however long ago that was', () => {
  const days = (first: number) => waterChanges({ ...routine, first }, []).map(([day]) => day)
  expect(days(3)).toEqual([3, 13, 23, 33])
  expect(days(-24)).toEqual([6, 16, 26, 36])
})

test('what is planned from today on is the routine as the log left it', () => {
  const events: readonly Event[] = [
    { day: 2, kind: 'water change', volume_L: 7 },
    changed(3, routine.kind, { volume_L: 5, every_days: 15 }),
  ]
  expect(waterChanges(routine, events, 4)).toEqual([
    [2, 7],
    [17, 5],
    [32, 5],
  ])
})

/** µmol of an atom that a process takes in ten days, with something changed in the log on the first. */
function taken(
  equipment: Equipment,
  process: string,
  atom: string,
  changes: Readonly<Record<string, unknown>>,
) {
  const { ledger } = run({
    system: { ...box, equipment: [equipment] },
    days: 10,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 1 },
    start: { 'water.skimmable/C': 1e6 },
    events: [changed(0, equipment.kind, changes)],
    facts: { 'foam.k.tank': 0.001 },
  })
  return moved(ledger, { process, atom })
}

test('half the air makes half the foam, and a pump that is off makes none', () => {
  const foam = (changes: Readonly<Record<string, unknown>>) =>
    taken({ kind: 'skimmer', air_L_per_hour: 200 }, 'foam-fractionation', 'C', changes)
  expect(foam({ air_L_per_hour: 100 }) / foam({})).toBeCloseTo(0.5, 2)
  expect(foam({ running: false })).toBe(0)
})

test('a cup that is emptied less often skims less, and one emptied as before skims as before', () => {
  const foam = (changes: Readonly<Record<string, unknown>>) =>
    taken({ kind: 'skimmer', cup_emptied_every_days: 4 }, 'foam-fractionation', 'C', changes)
  expect(foam({ cup_emptied_every_days: 4 })).toBe(foam({}))
  expect(foam({ cup_emptied_every_days: 28 })).toBeLessThan(0.8 * foam({}))
})

test('ferric media bind no more than the flow brings, and nothing while the pump is off', () => {
  const bound = (changes: Readonly<Record<string, unknown>>) =>
    taken({ kind: 'ferric media reactor', mass_g: 20, flow_L_per_hour: 50 }, 'ferric-media', 'P', changes)
  expect(bound({ flow_L_per_hour: 0.05 })).toBeLessThan(0.5 * bound({}))
  expect(bound({ running: false })).toBe(0)
})

test('ferric media are renewed at the interval that the log gives', () => {
  const equipment = [{ kind: 'ferric media reactor', mass_g: 20, replaced_every_days: 20 }] as const
  const swaps = (events: readonly Event[]) =>
    timeline({ system: { ...box, equipment }, events, from: 0, to: 40, asOf: 40 }).flatMap((moment) =>
      'happens' in moment && moment.happens === 'media removed' ? [moment.day] : [],
    )
  expect(swaps([])).toEqual([20])
  expect(swaps([changed(5, 'ferric media reactor', { replaced_every_days: 7 })])).toEqual([12, 19, 26, 33])
})

test('a lever on media fills them one interval after the last time, at once where that is over', () => {
  const equipment = [
    { kind: 'ferric media reactor', mass_g: 20, placed: 3, replaced_every_days: 10 },
  ] as const
  const filled = (mass_g: number, every_days: number, events: readonly Event[] = []) =>
    timeline({
      system: { ...box, equipment },
      events,
      from: 0,
      to: 60,
      asOf: 30,
      change: { from: 30, media: { mass_g, every_days } },
    }).flatMap((moment) =>
      'set' in moment && moment.day >= 30 ? [[moment.day, moment.set[ferricMassSetting]]] : [],
    )
  expect(filled(50, 40)).toEqual([[43, 50]])
  expect(filled(50, 20)).toEqual([
    [30.01, 50],
    [expect.closeTo(50.01), 50],
  ])
  expect(filled(0, 20, [{ day: 25, kind: 'media placed', mass_g: 20 }])).toEqual([[45, 0]])
})

test('carbon is dosed by the schedule of the description, each volume from its day on', () => {
  const schedule = [
    { from_: 2, mL_ethanol_per_day: 1 },
    { from_: 6, mL_ethanol_per_day: 0.5 },
  ]
  const { ledger } = run({
    system: { ...box, equipment: [{ kind: 'organic carbon dosing', substance: 'ethanol', schedule }] },
    days: 10,
  })
  // 0.789 g/mL of ethanol, of which 24/46 is carbon: 34,300 µmol a mL.
  expect(moved(ledger, { process: 'carbon-dosing', atom: 'C' }) / (34_300 * (4 * 1 + 4 * 0.5))).toBeCloseTo(
    1,
    2,
  )
})
