import { plain } from '../../figure/numbers.ts'
import { amount } from '../../ways/amounts.ts'
import { type Lever, upTo, volumeOf } from './lever.ts'

export const waterChange: Lever = {
  key: 'water',
  title: 'Water changes',
  short: 'Water',
  lacks: () => undefined,
  handles: [
    {
      setting: 'water_L',
      title: 'Water each time',
      measure: 'volume',
      reach: (system, { water_L = 0 }) => {
        const whole = volumeOf(system)
        return {
          min: 0,
          max: Math.max(5, upTo(whole / 2, 5), upTo(water_L, 5)),
          step: whole > 400 ? 5 : whole > 80 ? 1 : 0.5,
        }
      },
    },
    {
      setting: 'water_days',
      title: 'Days between changes',
      measure: 'days',
      reach: (_, { water_days = 0 }) => ({ min: 1, max: Math.max(42, water_days), step: 1 }),
    },
  ],
  says: ({ water_L, water_days }, system) => {
    const whole = volumeOf(system)
    const share = `${plain((100 * water_L) / whole)} % of your ${amount('volume', whole)}`
    return `That is ${amount('volume', (7 * water_L) / water_days)} a week, ${share} each time.`
  },
  yearly: ({ water_L, water_days }) => (365 * water_L) / water_days,
  inWords: (yearly) => `${amount('volume', yearly)} of salt water`,
}
