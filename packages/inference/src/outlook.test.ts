import { border, type Observation, type System } from '@holdfast/ecosystem'
import { expect, test } from 'vitest'
import { ledgerOf } from './ledger-of.ts'
import { futures, outlook, outlookFrom, outlookOf } from './outlook.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { past } from './past.ts'

// An invented tank of 100 L: pellets, a weekly change, rock and sand, and no algae.
const tank: System = {
  id: 'tank',
  name: 'Tank of 100 L',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 100 }],
  flow: [],
  surfaces: [
    {
      id: 'rock',
      vessel: 'display',
      kind: 'rock_face',
      area_m2: 0.5,
      light_umol_m2_s: 150,
      light_h_per_day: 9,
      age_days: 400,
    },
    {
      id: 'sand',
      vessel: 'display',
      kind: 'sand',
      area_m2: 0.25,
      light_umol_m2_s: 90,
      light_h_per_day: 9,
      age_days: 400,
    },
  ],
  rock: [{ kind: 'cured live', mass_kg: 10, age_days: 400 }],
  sand: { mass_kg: 8, depth_cm: 2 },
  source_water: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 25.5,
  evaporation_L_per_day: 2,
  feeds: [{ kind: 'dry pellet', g_per_day: 0.4, N_mass_fraction: 0.072, P_mass_fraction: 0.012 }],
  equipment: [{ kind: 'water change', volume_L: 10, every_days: 7 }],
  animals: [{ kind: 'clownfish', count: 2, mass_g: 8, role: 'fish' }],
  algae: [],
}
const reading = (
  day: number,
  quantity: 'nitrate' | 'phosphate',
  value: number,
  belowDetection = false,
): Observation => ({
  day,
  quantity,
  value,
  belowDetection,
})
const weekly = (values: readonly number[]) =>
  values.map((value, week) => reading(20_000 + 7 * week, 'nitrate', value))
const question: OutlookQuestion = {
  system: tank,
  observations: weekly([10, 11, 11, 12, 12, 13, 13, 14]),
  events: [],
  from: 20_000,
  asOf: 20_049,
  horizonDays: 28,
  members: 8,
  seed: 3,
}
const nitrate = (asked: OutlookQuestion) => {
  const [fan] = outlook(asked).outlook.fans
  const { p05, p50, p95 } = fan.quantiles
  const today = fan.days.indexOf(asked.asOf)
  return {
    today: p50[today],
    low: p05[today],
    high: p95[today],
    end: p50[p50.length - 1],
    endWidth: p95[p95.length - 1] - p05[p05.length - 1],
  }
}

test('the same question has the same answer', () => {
  const few = { ...question, members: 4 }
  expect(outlook(few)).toEqual(outlook(few))
})

test('readings draw the fan to them and narrow it', () => {
  const short = { ...question, horizonDays: 1 }
  const told = nitrate(short)
  const untold = nitrate({ ...short, observations: question.observations.slice(0, 1) })
  expect(Math.abs(told.today - 14)).toBeLessThan(Math.abs(untold.today - 14))
  expect(told.high - told.low).toBeLessThan(untold.high - untold.low)
})

test('the fan widens into the future', () => {
  const { low, high, endWidth } = nitrate(question)
  expect(endWidth).toBeGreaterThan(high - low)
})

test('a larger water change lowers nitrate, and today stays as it is', () => {
  const known = past(question)
  const levers = { waterChange: { volume_L: 40, every_days: 7 } }
  const [kept] = outlookFrom(known, question).outlook.fans
  const [changed] = outlookFrom(known, { ...question, levers }).outlook.fans
  const today = kept.days.indexOf(question.asOf)
  const last = kept.days.length - 1
  expect(changed.quantiles.p50[today]).toBe(kept.quantiles.p50[today])
  expect(changed.quantiles.p50[last]).toBeLessThan(0.8 * kept.quantiles.p50[last])
})

test('the chance of being in the band is the weight of the tanks that are in it', () => {
  const answer = outlook({ ...question, members: 8 })
  const [fan] = answer.outlook.fans
  const [{ low, high }] = answer.bands
  fan.quantiles.p05.forEach((p05, day) => {
    const chance = fan.inBand?.[day] ?? Number.NaN
    expect(chance).toBeGreaterThanOrEqual(0)
    expect(chance).toBeLessThanOrEqual(1)
    if (p05 > high || fan.quantiles.p95[day] < low) expect(chance).toBeLessThanOrEqual(0.1)
    if (p05 >= low && fan.quantiles.p95[day] <= high) expect(chance).toBeGreaterThanOrEqual(0.8)
  })
  expect(fan.inBand).toHaveLength(fan.days.length)
})

test('media that a lever puts in take phosphorus up, and the fan of their load says how much', () => {
  const reactor = { kind: 'ferric media reactor', mass_g: 0 } as const
  const known = past({ ...question, system: { ...tank, equipment: [...tank.equipment, reactor] } })
  const ends = (levers: OutlookQuestion['levers']) => {
    const { fans } = outlookFrom(known, {
      ...question,
      system: known.model.system,
      ...(levers && { levers }),
    }).outlook
    const end = (quantity: string) =>
      fans.find((fan) => fan.quantity === quantity)?.quantiles.p50.at(-1) ?? Number.NaN
    return { phosphate: end('phosphate'), load: end('media load') }
  }
  const [without, filled] = [ends(undefined), ends({ media: { mass_g: 30, every_days: 60 } })]
  expect(without.load).toBe(0)
  expect(filled.load).toBeGreaterThan(1)
  expect(filled.phosphate).toBeLessThan(without.phosphate)
})

test('members run on in any shares come to the same outlook, and the first of them to a rougher one', () => {
  const known = past(question)
  const run = futures(known.model, question)
  const { members } = known
  const courses = [...run(members.slice(0, 3)), ...run(members.slice(3, 4)), ...run(members.slice(4))]
  const whole = outlookFrom(known, question)
  expect(outlookOf(known, question, courses)).toEqual(whole)
  const rough = outlookOf(known, question, courses.slice(0, 4)).outlook
  expect(rough.members).toBe(4)
  expect(rough.fans[0].quantiles.p50).not.toEqual(whole.outlook.fans[0].quantiles.p50)
})

test('a phosphate that is never read keeps its fan between nothing and the limit, and moves with it', () => {
  const below = (limit: number): OutlookQuestion => ({
    ...question,
    observations: [0, 1, 2].map((week) => reading(20_000 + 7 * week, 'phosphate', limit, true)),
    asOf: 20_014,
    horizonDays: 1,
    members: 6,
  })
  const phosphateToday = (asked: OutlookQuestion): number => {
    const fan = outlook(asked).outlook.fans.find(({ quantity }) => quantity === 'phosphate')
    return fan ? fan.quantiles.p50[fan.days.indexOf(asked.asOf)] : Number.NaN
  }
  const fine = phosphateToday(below(0.03))
  expect(fine).toBeGreaterThan(0)
  expect(fine).toBeLessThan(0.05)
  expect(phosphateToday(below(0.3))).toBeGreaterThan(fine)
})

/** Eight weeks of readings, and half a year before them of which the log knows what was done alone. */
const years = { ...question, from: 19_800 }

test.each([
  ['', question, { from: 20_000, to: 20_049 }],
  [' over more than half a year too', years, { from: 19_800, to: 20_049 }],
])('the mean books balance: what came in left or is stored%s', (_, asked, span) => {
  const { ledger } = ledgerOf(asked, span)
  for (const atom of ['N', 'P', 'C'] as const) {
    const { inputs, exports, stored } = border(ledger, atom)
    const sum = (amounts: ReadonlyMap<string, number>) =>
      [...amounts.values()].reduce((total, amount) => total + amount, 0)
    expect((sum(inputs) - sum(exports) - stored) / sum(inputs)).toBeCloseTo(0, 9)
    expect(sum(inputs)).toBeGreaterThan(0)
  }
})

test('a run that is told to stop says so', () => {
  expect(() => outlook(question, { onProgress: () => undefined, cancelled: () => true })).toThrow(
    expect.objectContaining({ code: 'cancelled' }),
  )
})

test('an own value of a fact moves the outlook, and without one it is the same to the bit', () => {
  const few = { ...question, members: 8 }
  const before = outlook(few)
  expect(outlook({ ...few, ownFacts: [] })).toEqual(before)
  const lossy = { low: 0.5, typical: 0.6, high: 0.7, unit: '1', reason: 'measured' }
  const own = outlook({ ...few, ownFacts: [{ fact: 'unexplained.nitrate', ...lossy }] })
  const end = ({ outlook: { fans } }: typeof before) => fans[0].quantiles.p50.at(-1)
  expect(end(own)).not.toBe(end(before))
  const used = own.processes.flatMap(({ facts }) => facts).filter(({ id }) => id === 'unexplained.nitrate')
  expect(used[0]).toMatchObject({ typical: 0.6, source: 'You: measured', provenance: 'your own' })
  expect(own.outlook.remarks).toEqual(before.outlook.remarks)
})

test('an own value that moves nothing is said, in the outlook as in the ledger', () => {
  const idle = { low: 1, typical: 2, high: 3, unit: 'd⁻¹', reason: 'measured' }
  const own = [
    { fact: 'foam.k.tnk', ...idle },
    { fact: 'foam.k.tank', ...idle },
  ]
  const few = { ...question, members: 2, ownFacts: own }
  const said = [
    expect.stringContaining('foam.k.tnk is not used: the catalogue has no such fact'),
    'Your own value of foam.k.tank moves nothing: nothing in this system rests on it.',
  ]
  expect(outlook(few).outlook.remarks.slice(-2)).toEqual(said)
  expect(ledgerOf(few, { from: 20_000, to: 20_049 }).remarks).toEqual(said)
})

test('of a long span the ledger says that the latest readings alone fit it, of a short one nothing', () => {
  const remarks = (from: number) => ledgerOf({ ...years, members: 2 }, { from, to: 20_049 }).remarks
  expect(remarks(20_049 - 184)).toEqual([expect.stringContaining('the latest readings')])
  expect(remarks(20_049 - 183)).toEqual([])
})

test('a long ledger looks at what was known on its last day, and not at what was read since', () => {
  const span = { from: 19_800, to: 20_035 }
  const asked = { ...years, members: 4, levers: { feedFactor: 3 } }
  const before = asked.observations.filter(({ day }) => day <= span.to)
  expect(ledgerOf(asked, span)).toEqual(
    ledgerOf({ ...years, members: 4, asOf: span.to, observations: before }, span),
  )
})
