import { dates } from '../making/dates.ts'
import { changed, fed, freshMedia, inOrder, note, plucked } from '../making/deeds.ts'
import type { Deed } from '../making/story.ts'
import { firstDate, lastDate } from './system-document.ts'

/** Changes that were not made on their day, and when they were. */
const late: Readonly<Record<string, string>> = { '2026-01-11': '2026-01-16', '2026-05-03': '2026-05-22' }

const waterChanges = dates('2025-11-16', 14, lastDate).map((planned): Deed => {
  const date = late[planned] ?? planned
  return date === planned ? changed(date, 60) : changed(date, 60, `water change 60 L, was due on ${planned}`)
})

const snails = (date: string, change: 'added' | 'died', count: number, text: string): Deed => ({
  date,
  kind: 'animals',
  body: {
    change,
    taxon: 'Trochus histrio',
    count,
    mass_g: 9,
    ...(change === 'died' && { bodyTakenOut: text.includes('taken out') }),
    text,
  },
})

const mediaOut = (date: string): Deed => ({
  date,
  kind: 'media',
  body: { action: 'removed', medium: 'phosphate media', text: 'old ferric media out, reactor left empty' },
})

const hairOff = (date: string, share: number, text: string): Deed =>
  plucked(date, { surface: 'rock face', algae: 'hair_green', share, text })

/** All that was done in the year, in the order of the calendar. */
export const deeds = inOrder([
  ...waterChanges,
  mediaOut(firstDate),
  freshMedia('2026-02-22', 80),
  freshMedia('2026-07-05', 80),
  fed('2026-03-01', 10.5, 'one more cube every other day'),
  fed('2026-05-02', 18, 'neighbour feeds while we are away'),
  fed('2026-05-17', 10.5, 'back home, old amount again'),
  fed('2026-07-12', 9.5, 'less, until the hair algae is gone'),
  snails('2026-01-18', 'died', 3, 'three empty trochus shells'),
  snails('2026-04-12', 'died', 9, 'nine dead trochus after the heater stuck, shells taken out'),
  snails('2026-06-14', 'added', 25, '25 trochus, drip acclimatised'),
  snails('2026-07-05', 'added', 30, '30 more trochus'),
  snails('2026-08-23', 'added', 40, '40 trochus, for the first lot is thinning out'),
  snails('2026-09-20', 'died', 2, 'two empty shells'),
  snails('2026-09-27', 'added', 30, '30 trochus from a friend'),
  hairOff('2026-06-14', 0.5, 'plucked about half off the rock face, siphoned out'),
  hairOff('2026-07-19', 0.4, 'plucked again, mostly the left pillar'),
  note(firstDate, 'Log begins. Tank is two and a half years old.'),
  note('2026-01-11', 'Flu, nothing done today.'),
  note('2026-05-16', 'Back from two weeks away. The front pane is green, the freezer box is empty.'),
  note('2026-06-07', 'Long green tufts on the rock face, worst at the top.'),
  note('2026-08-02', 'The phosphate reagent ran out, ordered.'),
  note('2026-10-18', 'Tufts on the rock face are short now and spread no more.'),
])
