import { expect, test } from 'vitest'
import { ask } from '../ask.ts'
import type { CaseEvent, CaseFile, CaseReading, CaseSystem, Check, Expected } from '../case-file.ts'
import { withoutModel } from '../model-answers.ts'

const base: CaseSystem = {
  vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
  flow: [],
  surfaces: [],
  rock: [],
  source_water: { kind: 'RO/DI', NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { salinity_psu: 35, NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 25,
  pH: 8,
  evaporation_L_per_day: 4,
  feeds: [{ kind: 'dry pellet', g_per_day: 2, N_mass_fraction: 0.07, P_mass_fraction: 0.01 }],
  equipment: [{ kind: 'automatic top-off', reservoir_L: 20 }],
  animals: [],
}

interface Told {
  readonly system?: Partial<CaseSystem>
  readonly readings?: readonly CaseReading[]
  readonly events?: readonly CaseEvent[]
}

const reading = (
  date: string,
  quantity: string,
  value: number,
  form: string,
  unit = 'mg/L',
): CaseReading => ({
  date,
  quantity,
  value,
  form,
  unit,
})

function asked(check: Check, expected: Expected, { system, readings = [], events = [] }: Told = {}) {
  const file: CaseFile = {
    id: 'asked',
    title: 'asked',
    start: '2026-03-01',
    asof: '2026-03-31',
    system: { ...base, ...system },
    log: { readings, events },
    expert: [],
  }
  const statement = { id: 'a', statement: '', check, expected, strength: 'certain' } as const
  return ask(file, statement, withoutModel)
}

const near = (value: number, share = 0.001): Expected => ({
  range: [value * (1 - share), value * (1 + share)],
})
const ofNitrogen = 62.004 / 14.007

// Closed forms of the mass balance, from the numbers in the check.
const dilutions: readonly (readonly [string, Check, Expected])[] = [
  [
    'five changes of a fifth leave 26.2 of 80 mg/L',
    { quantity: 'nitrate_after_changes_mg_L', from_mg_L: 80, n: 5, change_fraction: 0.2 },
    near(80 * 0.8 ** 5),
  ],
  [
    'the same water run in slowly leaves 29.4',
    { quantity: 'nitrate_after_changes_mg_L', from_mg_L: 80, n: 5, change_fraction: 0.2, mode: 'continuous' },
    near(80 * Math.exp(-1)),
  ],
  [
    'from 80 to 20 takes nine changes of 15 %',
    { quantity: 'changes_needed', from_mg_L: 80, to_mg_L: 20, change_fraction: 0.15 },
    { equals: 9 },
  ],
  [
    'or three quarters at once',
    { quantity: 'single_change_fraction_needed', from_mg_L: 80, to_mg_L: 20 },
    near(0.75),
  ],
  [
    'or four of 29 %',
    { quantity: 'change_fraction_needed', from_mg_L: 80, to_mg_L: 20, n: 4 },
    near(1 - 0.25 ** 0.25),
  ],
  [
    'seven of a tenth replace 52 %',
    { quantity: 'fraction_replaced', n: 7, change_fraction: 0.1 },
    near(1 - 0.9 ** 7),
  ],
  [
    'continuously that is 277 L of 200',
    { quantity: 'water_needed_L', from_mg_L: 80, to_mg_L: 20, mode: 'continuous' },
    near(200 * Math.log(4)),
  ],
  [
    'in changes of a tenth 280 L',
    { quantity: 'water_needed_L', from_mg_L: 80, to_mg_L: 20, change_fraction: 0.1 },
    near(280),
  ],
]

test.each(dilutions)('dilution: %s', (_, check, expected) => {
  expect(asked(check, expected)).toMatchObject({ result: 'passed' })
})

const emptied = [{ date: '2026-03-25', kind: 'top-off empty', days: 6 }]

test('six days without top-off take 24 L and raise salinity by the part that is missing', () => {
  const told = { events: emptied }
  expect(
    asked({ quantity: 'salinity_at_day_psu', day: 30 }, near((35 * 200) / 176, 0.004), told).result,
  ).toBe('passed')
  expect(asked({ quantity: 'salinity_at_day_psu', day: 24 }, near(35, 1e-4), told).result).toBe('passed')
  expect(asked({ quantity: 'concentration_factor' }, near(200 / 176), told).result).toBe('passed')
  expect(asked({ quantity: 'water_to_add_L', target_psu: 35 }, near(24, 0.01), told).result).toBe('passed')
})

test('ten days of salt water in the top-off add the salt of 40 L', () => {
  const told = {
    events: [
      { date: '2026-03-21', kind: 'top-off changed', water: 'source water + salt', until: '2026-03-31' },
    ],
  }
  expect(asked({ quantity: 'salinity_at_day_psu' }, near(35 * 1.2, 0.006), told).result).toBe('passed')
})

test('a top-off by hand is all that replaces the vapour where nothing else does', () => {
  const told: Told = {
    system: { equipment: [], evaporation_L_per_day: 1 },
    events: [{ date: '2026-03-11', kind: 'top-off', volume_L: 5, water: 'RO/DI' }],
  }
  expect(asked({ quantity: 'concentration_factor' }, near(200 / 175), told).result).toBe('passed')
})

test('four days of five times the ration are 16 g of pellets too much, and the rise is theirs', () => {
  const told: Told = {
    events: [
      { date: '2026-03-10', kind: 'feed change', g_per_day: 10 },
      { date: '2026-03-12', kind: 'feed change', g_per_day: 2 },
    ],
  }
  expect(asked({ quantity: 'extra_input_N_mg' }, near(16 * 70), told).result).toBe('passed')
  expect(asked({ quantity: 'nitrate_rise_mg_L' }, near((16 * 70 * ofNitrogen) / 200), told).result).toBe(
    'passed',
  )
})

test('of five lost fish the three that were not found rot in the tank', () => {
  const lost = (count: number, note: string) => ({
    date: '2026-03-15',
    kind: 'animals lost',
    taxon: 'chromis',
    count,
    mass_g: 5,
    note,
  })
  const told: Told = { events: [lost(3, 'not found'), lost(2, 'removed the same day')] }
  // 2.4 to 3.0 % N of wet fish (Sterner & George 2000, memory).
  expect(asked({ quantity: 'dead_animal_N_mg' }, { range: [15 * 24, 15 * 30] }, told).result).toBe('passed')
})

const conversions: readonly (readonly [number, string, string, number])[] = [
  [5, 'NO3-N_mg_L', 'NO3_mg_L', 5 * ofNitrogen],
  [25, 'PO4-P_ug_L', 'PO4_mg_L', 0.0766535],
  [36, 'P ppb', 'PO4 ppm', 0.11038],
  [8, 'dKH', 'meq_L', 2.85322],
  [2.5, 'meq/L', 'CaCO3 mg/L', 125.107],
  [0.05, 'PO4_mg_L', 'PO4_umol_L', 0.526482],
  [0.5, 'NH4_mg_L', 'TAN-N_mg_L', 0.388242],
  [77, 'degF', 'degC', 25],
]

test.each(conversions)('%d %s are as many %s as the molar masses say', (value, from, to, expected) => {
  expect(asked({ quantity: 'converted_value', value, from, to }, near(expected)).result).toBe('passed')
})

test('a figure whose form is not said is not converted', () => {
  expect(
    asked({ quantity: 'converted_value', value: 5, from: 'mg/L', to: 'NO3_mg_L' }, near(5)),
  ).toMatchObject({
    result: 'failed',
  })
})

test('a reading of nitrate as N counts 4.43 times as much as its figure', () => {
  const readings = [reading('2026-03-01', 'nitrate', 4, 'NO3-N'), reading('2026-03-31', 'nitrate', 26, 'NO3')]
  const rise = 26 - 4 * ofNitrogen
  const expected = near(((rise / ofNitrogen) * 200) / (140 * 30))
  expect(asked({ quantity: 'fraction_of_N_input_seen_as_nitrate_rise' }, expected, { readings }).result).toBe(
    'passed',
  )
})

test('a reading four times under its neighbours is the one to question, and a steady log has none', () => {
  const log = [20, 21, 5, 22].map((value, week) =>
    reading(`2026-03-0${1 + 2 * week}`, 'nitrate', value, 'NO3'),
  )
  expect(asked({ quantity: 'flagged_reading' }, { equals: '2026-03-05' }, { readings: log }).result).toBe(
    'passed',
  )
  const steady = log.filter(({ value }) => value !== 5)
  expect(asked({ quantity: 'flagged_reading' }, { equals: '2026-03-05' }, { readings: steady }).result).toBe(
    'failed',
  )
})

test('phosphate that could not be read bounds no ratio', () => {
  const nitrate = { ...reading('2026-03-30', 'nitrate', 0.2, 'NO3'), below_detection: true }
  const phosphate = reading('2026-03-30', 'phosphate', 0.08, 'PO4')
  const bound = 0.2 / 62.004 / (0.08 / 94.97)
  const check = { quantity: 'N_to_P_molar_upper_bound' }
  expect(asked(check, near(bound), { readings: [nitrate, phosphate] }).result).toBe('passed')
  const unread = { ...phosphate, below_detection: true }
  expect(asked(check, near(bound), { readings: [nitrate, unread] })).toMatchObject({ result: 'failed' })
})

const trends: readonly (readonly [string, readonly (readonly [string, number])[], string])[] = [
  [
    '5 to 20 in a month',
    [
      ['2026-03-01', 5],
      ['2026-03-15', 12],
      ['2026-03-31', 20],
    ],
    'rising',
  ],
  [
    '10 to 10.5 and back',
    [
      ['2026-03-01', 10],
      ['2026-03-15', 10.5],
      ['2026-03-31', 10],
    ],
    'steady',
  ],
  [
    '20 to 8',
    [
      ['2026-03-01', 20],
      ['2026-03-31', 8],
    ],
    'falling',
  ],
  [
    '8 with one 45 between',
    [
      ['2026-03-01', 8],
      ['2026-03-05', 8],
      ['2026-03-08', 45],
      ['2026-03-15', 8],
      ['2026-03-31', 8],
    ],
    'steady',
  ],
]

test.each(trends)('nitrate from %s is a trend by its own word', (_, points, word) => {
  const readings = points.map(([date, value]) => reading(date, 'nitrate', value, 'NO3'))
  expect(asked({ quantity: 'nitrate_trend_past' }, { equals: word }, { readings }).result).toBe('passed')
})

const nitrates = (...values: readonly number[]) =>
  values.map((value, at) => reading(`2026-03-0${1 + 2 * at}`, 'nitrate', value, 'NO3'))
const phosphates = [reading('2026-03-05', 'phosphate', 0.05, 'PO4')]

test.each<[string, Told, string]>([
  ['a reading that stands out', { readings: [...nitrates(8, 40, 8), ...phosphates] }, 'second_kit'],
  ['no reading of nitrate', { readings: phosphates }, 'nitrate'],
  ['no reading of phosphate', { readings: nitrates(8, 8) }, 'phosphate'],
  [
    'new water that nobody has measured',
    { readings: [...nitrates(8, 8), ...phosphates], system: { source_water: { kind: 'tap' } } },
    'source_water',
  ],
  ['nothing in doubt', { readings: [...nitrates(8, 8), ...phosphates] }, 'none'],
])('without a look at a growth, next after %s', (_, told, next) => {
  expect(asked({ quantity: 'ask_next' }, { equals: next }, told).result).toBe('passed')
})

test('top-off leaves behind whatever it carries but water', () => {
  const source_water = { kind: 'tap', NO3_mg_L: 20, PO4_mg_L: 0, silicate_SiO2_mg_L: 5, copper_ug_L: 8 }
  const expected = { includes: ['nitrate', 'silicate', 'copper'], excludes: ['phosphate'] }
  expect(
    asked({ quantity: 'input_accumulates_from_topoff' }, expected, { system: { source_water } }).result,
  ).toBe('passed')
})

const noted = (date: string, traits: Readonly<Record<string, string>>): CaseEvent => ({
  date,
  kind: 'observation',
  traits,
})

test('a growth is named from all that was noted of it, a later note before an earlier one', () => {
  const events = [
    noted('2026-03-20', { colour: 'wine_red', siphon_behaviour: 'lifts_in_sheets' }),
    noted('2026-03-10', { colour: 'bright_green', form: 'slimy_sheet' }),
  ]
  expect(asked({ quantity: 'identify_kind' }, { equals: 'cyano' }, { events }).result).toBe('passed')
  expect(asked({ quantity: 'identify_kind' }, { equals: 'cyanobacteria' }, { events }).result).toBe('passed')
  expect(asked({ quantity: 'identify_kind' }, { equals: 'dino' }, { events }).result).toBe('failed')
})

test('of brown slime the next look is at dawn or through a microscope, and nothing is touched', () => {
  const events = [
    noted('2026-03-10', {
      colour: 'brown',
      form: 'slime_lumps_strings',
      gas_bubbles_afternoon: 'many_trapped',
      mainly_on: 'rock',
    }),
  ]
  const next = { one_of: ['microscope', 'night_look'] }
  expect(asked({ quantity: 'ask_next' }, next, { events })).toMatchObject({ result: 'passed' })
})

test('where the measures agree nothing more is asked', () => {
  const events = [noted('2026-03-10', { form: 'ball', colour: 'bright_green', texture: 'rubbery' })]
  expect(asked({ quantity: 'ask_next' }, { equals: 'none' }, { events }).result).toBe('passed')
})

test('without an observation no growth is named', () => {
  expect(asked({ quantity: 'identify_kind' }, { equals: 'cyano' })).toMatchObject({
    result: 'failed',
    got: expect.stringContaining('needs an observation'),
  })
})
