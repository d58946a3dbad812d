import { dates, firstOfMonth } from '../making/dates.ts'
import type { Story } from '../making/story.ts'
import { deeds, left } from './husbandry.ts'
import { firstDate, lastDate, systemDocument } from './system-document.ts'

const sundays = dates('2025-05-18', 7, lastDate).filter((date) => !left.includes(date))

/** Its keeper trusts the refugium; water changes, foam and media carry the load. */
export const refugium1500: Story = {
  document: systemDocument,
  firstDate,
  lastDate,
  tank: {
    seed: 1500,
    member: 6,
    distance: 0.3,
    facts: {
      'unexplained.nitrate': 0.75,
      'unexplained.phosphate': 0.7,
      'unexplained.half_phosphate': 0.25,
      'sorb.kd.sand': 80,
    },
    opening: { nitrate_mg_L: 12, phosphate_mg_L: 0.08 },
  },
  deeds,
  tests: {
    seed: 1500,
    dates: [firstDate, ...sundays],
    noReagent: { from: '2026-01-04', to: '2026-01-25' },
    slip: '2025-08-31',
    twice: '2025-11-16',
    remarks: { '2026-01-04': 'phosphate kit out of date, new one ordered' },
  },
  surveys: {
    dates: firstOfMonth(sundays),
    of: ['rock face', 'glass'].map((surface) => ({ surface, algae: 'hair_green', called: 'hair algae' })),
  },
}
