import { dates } from '../making/dates.ts'
import { changed, fed, inOrder, note, plucked } from '../making/deeds.ts'
import type { Deed } from '../making/story.ts'
import { firstDate, lastDate } from './system-document.ts'

/** The day of the new lamp; what comes of it, comes on the rock face. */
export const lampDate = '2026-05-16'

/** Sundays on which nobody was at home. */
export const left = ['2026-05-10', '2026-08-16', '2026-08-23']

const waterChanges = dates('2026-03-15', 7, lastDate)
  .filter((date) => !left.includes(date))
  .map((date) => changed(date, 10))

const brighter = (surface: string, light_umol_m2_s: number): Deed => ({
  date: lampDate,
  kind: 'light-change',
  body: { surface, light_umol_m2_s, text: `new lamp, ${light_umol_m2_s} on the ${surface}` },
})

const hairOff = (date: string, share: number, text: string): Deed =>
  plucked(date, { surface: 'rock face', algae: 'hair_green', share, text })

/** All that was done in the eight months, in the order of the calendar. */
export const deeds = inOrder([
  ...waterChanges,
  brighter('rock face', 220),
  brighter('rock underside', 14),
  brighter('glass', 110),
  brighter('sand', 130),
  hairOff('2026-09-12', 0.4, 'pulled what came off with tweezers, into the bin'),
  fed('2026-09-13', 0.9, 'less, the rock is a lawn'),
  note(firstDate, 'Log begins. A year and a half old, never any trouble.'),
  note('2026-05-10', 'At the lake, no water change.'),
  note(lampDate, 'Old lamp flickered. New one hung at the same height, at full.'),
  note('2026-07-12', 'First green tufts, where the new lamp is brightest.'),
  note('2026-08-30', 'Back from the holiday, the neighbour only topped up and fed.'),
  note('2026-10-04', 'Corals under the lamp look fine. The rock does not.'),
])
