import { ordinaryWater } from '@holdfast/ecosystem/testing/ordinary-water'
import type { Check } from './check.ts'

/** When nitrate is looked at: soon after, and a year on, when algae have had time to answer. */
const days = [60, 365] as const

/** Half the feed must lower nitrate and twice the feed raise it, in every one of twenty ordinary systems. */
export function fedOtherwise(): readonly Check[] {
  const systems = Array.from({ length: 20 }, (_, n) => ({
    number: n + 1,
    half: ordinaryWater(n + 1, days, 0.5),
    usual: ordinaryWater(n + 1, days),
    twice: ordinaryWater(n + 1, days, 2),
  }))
  return days.map((day, at) => {
    const nitrate = systems.map(({ number, ...fed }) => ({
      number,
      half: fed.half[at]?.nitrate ?? Number.NaN,
      usual: fed.usual[at]?.nitrate ?? Number.NaN,
      twice: fed.twice[at]?.nitrate ?? Number.NaN,
    }))
    const astray = nitrate.filter(({ half, usual, twice }) => !(half < usual && usual < twice))
    const which = astray.map(({ number, half, usual, twice }) => {
      const [low, middle, high] = [half, usual, twice].map((value) => value.toPrecision(2))
      return `${number} (${low}, ${middle}, ${high} mg/L)`
    })
    return {
      name: `twenty ordinary systems: half the feed lowers nitrate and twice the feed raises it, after ${day} days`,
      outcome: astray.length === 0 ? 'passed' : 'failed',
      says: `in ${nitrate.length - astray.length} of ${nitrate.length}${which.length > 0 ? `; not in ${which.join(', ')}` : ''}`,
    }
  })
}
