import { assemble, type Day, type System, simulate, startOf, stateIndex, timeline } from '@holdfast/ecosystem'
import { nothingUnexplained } from '@holdfast/ecosystem/testing/run'
import { drawMember, weightedQuantiles } from '@holdfast/inference'
import { molarMass } from '@holdfast/quantities'
import type { Check } from './check.ts'

/** Draws of every fact within its band. */
const draws = 60
/** 2 mg/L of ammonia nitrogen in 200 L. */
const dose_g = 1.528
const longest: Day = 200
/** Part of the dose below which a kit finds no ammonia and no nitrite any more. */
const gone = 0.02

/** An invented dark tank of 200 L with 20 kg of quarried rock, and of those some that came alive. */
const tank = (seed_kg: number): System => ({
  id: 'cycle',
  name: 'Cycle of 200 L',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
  flow: [],
  surfaces: [
    {
      id: 'rock_face',
      vessel: 'display',
      kind: 'rock_face',
      area_m2: 1.1,
      light_umol_m2_s: 0,
      light_h_per_day: 0,
      age_days: 0,
    },
  ],
  rock: [
    { kind: 'quarried dry', mass_kg: 20 - seed_kg, age_days: 0 },
    ...(seed_kg > 0 ? [{ kind: 'cured live' as const, mass_kg: seed_kg, age_days: 0 }] : []),
  ],
  source_water: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 26,
  evaporation_L_per_day: 0,
  feeds: [],
  equipment: [],
  animals: [],
  algae: [],
})

/** A pebble to a few pieces of live rock, kg; drawn evenly by its logarithm (estimate). */
const seeds = [0.05, 0.5] as const

interface Cycle {
  readonly weeks: number
  readonly inOrder: boolean
}

/** How long a cycle takes over all that is not known (common practice): seeded 3 to 6 weeks, dry rock 5 to 10. */
export function cycles(): readonly Check[] {
  const [least, most] = seeds
  const seeded = drawn((member) => least * (most / least) ** ((member + 0.5) / draws))
  const bare = drawn(() => 0)
  const astray = [...seeded, ...bare].filter(({ inOrder }) => !inOrder).length
  return [
    within('a cycle seeded with 50 to 500 g of live rock, median', medianWeeks(seeded), [3, 6]),
    within('a cycle on dry rock without seed, median', medianWeeks(bare), [5, 10]),
    {
      name: 'ammonia peaks before nitrite and nitrite before nitrate',
      outcome: astray === 0 ? 'passed' : 'failed',
      says: `${astray} of ${seeded.length + bare.length} draws out of order`,
    },
  ]
}

const drawn = (seed_kg: (member: number) => number): readonly Cycle[] =>
  Array.from({ length: draws }, (_, member) => cycleOf(tank(seed_kg(member)), member))

function cycleOf(system: System, member: number): Cycle {
  const model = assemble(system)
  const parameters = drawMember(model, 1, member)
  for (const [k, { fact }] of model.parameters.entries())
    if (Object.hasOwn(nothingUnexplained, fact)) parameters[k] = 0
  const { samples } = simulate({
    model,
    parameters,
    start: startOf(model, parameters, { nitrate_mg_L: 0, phosphate_mg_L: 0 }, 0),
    from: 0,
    to: longest,
    timeline: timeline({
      system,
      events: [{ day: 0.1, kind: 'dose', substance: 'ammonium chloride', mass_g: dose_g }],
      from: 0,
      to: longest,
      asOf: 0,
    }),
    samples: Array.from({ length: longest * 4 }, (_, quarter) => (quarter + 1) / 4),
  })
  const course = (name: string): readonly number[] => {
    const index = stateIndex(model, `water.${name}/N`)
    return samples.map((states) => states[index] ?? Number.NaN)
  }
  const [ammonia, nitrite, nitrate] = [course('ammonia'), course('nitrite'), course('nitrate')]
  const peak = (values: readonly number[]): number => values.indexOf(Math.max(...values))
  const least = (gone * dose_g * 1e6) / molarMass('NH4Cl')
  const open = samples.findLastIndex((_, at) => Math.max(ammonia[at] ?? 0, nitrite[at] ?? 0) > least)
  return {
    weeks: (open + 2) / 4 / 7,
    inOrder: peak(ammonia) < peak(nitrite) && peak(nitrite) < peak(nitrate),
  }
}

function medianWeeks(cycles: readonly Cycle[]): number {
  const weeks = cycles.map((cycle) => cycle.weeks)
  return (
    weightedQuantiles(
      weeks,
      weeks.map(() => 1 / weeks.length),
      [0.5],
    )[0] ?? Number.NaN
  )
}

const within = (name: string, weeks: number, [low, high]: readonly [number, number]): Check => ({
  name,
  outcome: weeks >= low && weeks <= high ? 'passed' : 'failed',
  says: `${weeks.toPrecision(2)} weeks over ${draws} draws, asked ${low} to ${high}`,
})
