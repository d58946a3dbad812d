import { dates } from '../making/dates.ts'
import { changed, fed, freshMedia, inOrder, note, plucked } from '../making/deeds.ts'
import type { Deed } from '../making/story.ts'
import { firstDate, lastDate } from './system-document.ts'

/** Sundays on which nobody was at home. */
export const left = ['2025-08-03', '2025-08-10', '2025-12-28', '2026-07-26']

const waterChanges = dates('2025-05-18', 7, lastDate)
  .filter((date) => !left.includes(date))
  .map((date) => changed(date, 150))

/** A handful every six weeks, for there is no more to take: what the refugium truly carries. */
const harvests = dates('2025-06-08', 42, lastDate).map(
  (date, i): Deed => ({
    date,
    kind: 'harvest',
    body: { from: 'refugium', wet_g: 150 + 10 * (i % 4), text: 'thinned the ball in the refugium' },
  }),
)

const media = dates('2025-06-08', 42, lastDate).map((date) => freshMedia(date, 500))

const snails = ['2025-10-12', '2026-03-08', '2026-07-12'].map(
  (date): Deed => ({
    date,
    kind: 'animals',
    body: { change: 'added', taxon: 'Trochus histrio', count: 60, mass_g: 9, text: '60 trochus of our own' },
  }),
)

/** All that was done in the eighteen months, in the order of the calendar. */
export const deeds = inOrder([
  ...waterChanges,
  ...harvests,
  ...media,
  ...snails,
  fed('2025-10-05', 31, 'twelve young fish in the grow-out tanks eat too'),
  fed('2026-03-01', 35, 'more for the young ones'),
  plucked('2026-05-10', {
    surface: 'rock face',
    algae: 'hair_green',
    share: 0.3,
    text: 'pulled what stood out on the left',
  }),
  note(firstDate, 'Log begins. The refugium does the work here, the rest is a habit.'),
  note('2025-12-28', 'Away over the holidays, a friend fed.'),
  note('2026-02-08', 'The ball in the refugium is no bigger than at Christmas. Harvested all the same.'),
  note('2026-09-06', 'Thinking of giving up the weekly water changes, the refugium should do.'),
])
