import { dates, firstOfMonth } from '../making/dates.ts'
import type { Story } from '../making/story.ts'
import { deeds, left } from './husbandry.ts'
import { firstDate, lastDate, systemDocument } from './system-document.ts'

const sundays = dates('2026-03-15', 7, lastDate).filter((date) => !left.includes(date))

/** A new lamp over a rock that two snails had kept short under the old one. */
export const reef90: Story = {
  document: systemDocument,
  firstDate,
  lastDate,
  tank: {
    seed: 90,
    member: 5,
    distance: 0.3,
    // So that the water under the old lamp is one that a keeper would call good.
    facts: {
      'unexplained.nitrate': 0.5,
      'unexplained.phosphate': 1,
      'unexplained.half_phosphate': 0.25,
      'sorb.kd.sand': 80,
    },
    opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.08 },
  },
  deeds,
  tests: {
    seed: 90,
    dates: [firstDate, ...sundays],
    noReagent: { from: '2026-04-12', to: '2026-04-19' },
    slip: '2026-06-21',
    twice: '2026-07-05',
    remarks: {
      '2026-04-12': 'phosphate bottle empty',
      '2026-05-17': 'a day after the new lamp',
    },
  },
  surveys: {
    dates: firstOfMonth(sundays),
    of: ['rock face', 'glass'].map((surface) => ({ surface, algae: 'hair_green', called: 'hair algae' })),
  },
}
