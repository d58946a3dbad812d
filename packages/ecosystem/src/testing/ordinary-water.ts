import { ordinarySystem } from './ordinary.ts'
import { run } from './run.ts'

/** Nutrients of the display, mg/L of the ion, ammonia as nitrogen. */
export interface OrdinaryWater {
  readonly nitrate: number
  readonly phosphate: number
  readonly ammonia: number
}

/** What an ordinary system's water reads on each of these days, from one start, with the feed times a factor. */
export function ordinaryWater(
  number: number,
  days: readonly number[],
  feedFactor = 1,
): readonly OrdinaryWater[] {
  const system = ordinarySystem(number)
  const { concentrations } = run({
    system: {
      ...system,
      feeds: system.feeds.map((feed) => ({ ...feed, g_per_day: feed.g_per_day * feedFactor })),
    },
    days: Math.max(...days),
    opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.06 },
    samples: days,
  })
  const of = (id: string, mass: number): readonly number[] =>
    concentrations(id).map((amount) => (amount * mass) / 1000)
  const [nitrate, phosphate, ammonia] = [
    of('water.nitrate/N', 62.005),
    of('water.phosphate/P', 94.97),
    of('water.ammonia/N', 14.007),
  ]
  return days.map((_, at) => ({ nitrate: nitrate[at], phosphate: phosphate[at], ammonia: ammonia[at] }))
}
