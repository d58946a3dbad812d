import { dates, firstOfMonth } from '../making/dates.ts'
import type { Story } from '../making/story.ts'
import { deeds } from './husbandry.ts'
import { firstDate, lastDate, systemDocument } from './system-document.ts'

const away = ['2026-05-03', '2026-05-10']
/** Every Sunday but for the holiday. */
const sundays = dates('2025-11-16', 7, lastDate).filter((date) => !away.includes(date))

/** A holiday of overfeeding, with too small a crew. */
export const reef600: Story = {
  document: systemDocument,
  firstDate,
  lastDate,
  tank: {
    seed: 600,
    member: 9,
    distance: 0.45,
    // So that what comes in and what leaves come to a year between poor and rich.
    facts: {
      'unexplained.nitrate': 1.1,
      'unexplained.phosphate': 1.1,
      'unexplained.half_phosphate': 0.25,
      'sorb.kd.sand': 80,
    },
    opening: { nitrate_mg_L: 7, phosphate_mg_L: 0.07 },
  },
  deeds,
  tests: {
    seed: 2026,
    dates: [firstDate, ...sundays],
    noReagent: { from: '2026-08-02', to: '2026-08-30' },
    slip: '2026-02-15',
    twice: '2026-09-13',
    remarks: {
      '2025-11-10': 'new notebook',
      '2026-05-17': 'first test after the holiday',
      '2026-08-02': 'no phosphate reagent left',
      '2026-09-06': 'new phosphate kit, same scale',
    },
  },
  surveys: {
    dates: firstOfMonth(sundays),
    of: ['rock face', 'glass'].map((surface) => ({ surface, algae: 'hair_green', called: 'hair algae' })),
  },
}
