import type { BodyOf, EntryKind } from '@holdfast/logbook'
import { firstDate, lastDate } from './system-document.ts'

/** Something that the keeper did or wrote down on a date. */
export type Deed = {
  [K in EntryKind]: { readonly date: string; readonly kind: K; readonly body: BodyOf<K> }
}[EntryKind]

/** Every so many days from a date on, up to the last day of the log. */
export function dates(from: string, everyDays: number): readonly string[] {
  const found: string[] = []
  for (let time = Date.parse(from); time <= Date.parse(lastDate); time += everyDays * 86_400_000)
    found.push(new Date(time).toISOString().slice(0, 10))
  return found
}

/** Changes that were not made on their day, and when they were. */
const late: Readonly<Record<string, string>> = { '2026-01-11': '2026-01-16', '2026-05-03': '2026-05-22' }

const waterChanges = dates('2025-11-16', 14).map((planned): Deed => {
  const date = late[planned] ?? planned
  const text = date === planned ? 'water change 60 L' : `water change 60 L, was due on ${planned}`
  return { date, kind: 'water-change', body: { volume_L: 60, text } }
})

const fed = (date: string, g_per_day: number, text: string): Deed => ({
  date,
  kind: 'feeding',
  body: { g_per_day, text },
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

const plucked = (date: string, share: number, text: string): Deed => ({
  date,
  kind: 'hand-removal',
  body: { surface: 'rock face', algae: 'hair_green', share, leftToDrift: false, text },
})

const freshMedia = (date: string): Deed => ({
  date,
  kind: 'media',
  body: { action: 'replaced', medium: 'phosphate media', mass_g: 80, text: 'new ferric media, 80 g' },
})

const mediaOut = (date: string): Deed => ({
  date,
  kind: 'media',
  body: { action: 'removed', medium: 'phosphate media', text: 'old ferric media out, reactor left empty' },
})

const note = (date: string, text: string): Deed => ({ date, kind: 'note', body: { text } })

/** All that was done in the year, in the order of the calendar. */
export const deeds: readonly Deed[] = [
  ...waterChanges,
  mediaOut(firstDate),
  freshMedia('2026-02-22'),
  freshMedia('2026-07-05'),
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
  plucked('2026-06-14', 0.5, 'plucked about half off the rock face, siphoned out'),
  plucked('2026-07-19', 0.4, 'plucked again, mostly the left pillar'),
  note(firstDate, 'Log begins. Tank is two and a half years old.'),
  note('2026-01-11', 'Flu, nothing done today.'),
  note('2026-05-16', 'Back from two weeks away. The front pane is green, the freezer box is empty.'),
  note('2026-06-07', 'Long green tufts on the rock face, worst at the top.'),
  note('2026-08-02', 'The phosphate reagent ran out, ordered.'),
  note('2026-10-18', 'Tufts on the rock face are short now and spread no more.'),
].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
