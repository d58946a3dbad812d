import { readFileSync } from 'node:fs'
import Ajv from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { expect, test } from 'vitest'

import { systemDescription } from '../entries/system-description.ts'
import { issueInWords } from '../issue.ts'
import { modelDay } from '../model-day.ts'
import { systemFileJsonSchema } from './document.ts'
import { readSystemFile } from './read-system-file.ts'

const hall = {
  name: 'Reef in the hall',
  timeZone: 'Europe/Berlin',
  vessels: [
    { id: 'display', kind: 'display', water: '450 L', glass: '520 L', length: '150 cm' },
    { id: 'sump', kind: 'sump', water: '20 US gal' },
  ],
  flow: [{ between: ['display', 'sump'], 'each way': '3000 L/h' }],
  surfaces: [
    {
      id: 'rock face',
      vessel: 'display',
      kind: 'rock_face',
      area: '2 m2',
      light: '200 µmol/m2/s',
      hours: 9,
      age: '800 d',
    },
  ],
  rock: [{ kind: 'cured live', mass: '45 kg', age: '800 d' }],
  sand: { mass: '20 kg', depth: '1 in' },
  'source water': { kind: 'RO/DI', nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4' },
  'salt mix': { nitrate: '0.2 mg/L NO3-N', phosphate: '10 ppb P' },
  salinity: '1.02637 SG 25/25 °C',
  temperature: '78 °F',
  evaporation: '8 L/d',
  feeds: [{ kind: 'dry pellet', amount: '4 g/d', nitrogen: '7.2 %', phosphorus: '1.2 %' }],
  equipment: [
    { kind: 'water change', volume: '60 L', every: '2 weeks', first: '2026-01-04' },
    { kind: 'skimmer', air: '300 L/h', off: [['2026-01-05', '2026-01-05']] },
    {
      kind: 'ferric media reactor',
      medium: 'activated alumina',
      mass: '200 g',
      placed: '2026-01-04',
      capacity: ['2 mg P/g', '4 mg P/g', '8 mg P/g'],
    },
    { kind: 'heater', watts: 300 },
  ],
  animals: [{ kind: 'trochus snail', taxon: 'Trochus histrio', count: 20, role: 'grazer' }],
  algae: [{ kind: 'hair_green', surface: 'rock face', cover: 0.05 }],
}

const changed = (changes: Record<string, unknown>): string => JSON.stringify({ ...hall, ...changes })
function issuesOf(text: string): readonly string[] {
  const read = readSystemFile(text)
  return read.ok ? ['read'] : read.issues.map((issue) => `${issue.code}: ${issueInWords(issue)}`)
}

test('a system file gives the system, every value in the unit of the model', () => {
  const read = readSystemFile(JSON.stringify(hall))
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  const { system } = read
  expect(system.id).toBe('reef-in-the-hall')
  expect(system.vessels[1].volume_L).toBeCloseTo(75.708, 3)
  expect(system.flow).toEqual([{ a: 'display', b: 'sump', L_per_hour: 3000 }])
  expect(system.surfaces[0]).toMatchObject({
    area_m2: 2,
    light_umol_m2_s: 200,
    light_h_per_day: 9,
    age_days: 800,
  })
  expect(system.sand).toEqual({ mass_kg: 20, depth_cm: expect.closeTo(2.54, 9) })
  // 0.2 mg/L of nitrate nitrogen and 10 µg/L of phosphorus, by molar masses.
  expect(system.salt_mix.NO3_mg_L).toBeCloseTo(0.8853, 4)
  expect(system.salt_mix.PO4_mg_L).toBeCloseTo(0.03066, 5)
  // Specific gravity of salinity 35 at 25/25 °C by EOS-80.
  expect(system.salinity_psu).toBeCloseTo(35, 1)
  expect(system.temperature_C).toBeCloseTo(25.556, 3)
  expect(system.evaporation_L_per_day).toBeCloseTo(8, 9)
  expect(system.feeds[0]).toMatchObject({
    g_per_day: expect.closeTo(4, 9),
    N_mass_fraction: expect.closeTo(0.072, 9),
  })
  expect(system.equipment).toEqual([
    {
      kind: 'water change',
      volume_L: 60,
      every_days: 14,
      first: modelDay('2026-01-04', 13, 'Europe/Berlin'),
    },
    { kind: 'skimmer', air_L_per_hour: 300, off: [[20458 - 1 / 24, 20459 - 1 / 24]] },
    {
      kind: 'ferric media reactor',
      medium: 'activated alumina',
      mass_g: 200,
      placed: modelDay('2026-01-04', 12, 'Europe/Berlin'),
      capacity_mg_P_per_g: [2, 4, 8].map((value) => expect.closeTo(value, 9)),
    },
    { kind: 'heater', watts: 300 },
  ])
  expect(systemDescription.safeParse(system).success).toBe(true)
  expect(read.document).toEqual(hall)
})

test('an empty file, bytes of a picture and text that is no JSON are refused with the place', () => {
  expect(issuesOf(' \n')).toEqual([expect.stringMatching(/^empty-file/)])
  expect(
    issuesOf(new TextDecoder().decode(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0))),
  ).toEqual([expect.stringMatching(/^not-text/)])
  expect(issuesOf('{\n  "name": "Reef",\n  "timeZone" "Europe/Berlin"\n}')).toEqual([
    expect.stringContaining('System file, line 3, column 14: ""Europe/Berl" does not belong there'),
  ])
  expect(issuesOf('{"name": "Reef",}')).toEqual([expect.stringContaining('line 1, column 17')])
  expect(issuesOf('{"name": "Reef"')).toEqual([
    expect.stringContaining('line 1, column 16: the end of the file'),
  ])
})

test('a unit that nobody knows is refused in the words of the field', () => {
  const vessels = [{ ...hall.vessels[0], water: '60 foo' }, hall.vessels[1]]
  expect(issuesOf(changed({ vessels }))).toEqual([
    'unknown-unit: Vessels 1, water: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.',
  ])
})

test('a volume below 0 is refused', () => {
  const vessels = [{ ...hall.vessels[0], water: '-450 L' }, hall.vessels[1]]
  expect(issuesOf(changed({ vessels }))).toEqual([
    expect.stringMatching(/^negative: Vessels 1, water: "-450 L" is below 0\./),
  ])
})

test('gallons of no country and nitrate without a form are asked back', () => {
  const source = { nitrate: '5 mg/L', phosphate: '0 mg/L PO4' }
  const equipment = [{ kind: 'water change', volume: '10 gal', every: '7 d' }]
  const [nitrate, gallons] = issuesOf(changed({ 'source water': source, equipment }))
    .toSorted()
    .toReversed()
  expect(nitrate).toMatch(/^which-gallon|^which-form/)
  expect([nitrate, gallons].join('\n')).toContain('5 mg/L NO3-N')
  expect([nitrate, gallons].join('\n')).toContain('10 imp gal')
})

test('a system without surfaces is refused, whether the list is empty or missing', () => {
  expect(issuesOf(changed({ surfaces: [], algae: [] }))).toEqual([expect.stringMatching(/^none: surfaces/)])
  expect(issuesOf(changed({ surfaces: undefined, algae: [] }))).toEqual([
    expect.stringMatching(/^missing: surfaces/),
  ])
})

test('a surface in a vessel that does not exist names the vessels there are', () => {
  const surfaces = [{ ...hall.surfaces[0], vessel: 'refugium' }]
  expect(issuesOf(changed({ surfaces }))).toEqual([
    'no-such-vessel: surfaces 1, vessel: there is no vessel "refugium". There is: display, sump. Name one of these, or add the vessel.',
  ])
})

test('ids that stand twice are refused', () => {
  const surfaces = [hall.surfaces[0], hall.surfaces[0]]
  expect(issuesOf(changed({ surfaces }))).toEqual([
    expect.stringMatching(/^duplicate-id: surfaces: "rock face"/),
  ])
})

test('an unknown key, kind or word names the nearest that is known', () => {
  expect(issuesOf(changed({ salinty: '35 psu' }))).toEqual([
    expect.stringContaining('Did you mean "salinity"?'),
  ])
  const surfaces = [{ ...hall.surfaces[0], kind: 'rockface', ligth: '3' }]
  expect(issuesOf(changed({ surfaces })).join('\n')).toMatch(
    /Did you mean "rock_face"\?[\s\S]*Did you mean "light"\?/,
  )
  const equipment = [{ kind: 'skimer' }, { kind: 'water change', volume: '60 L', evry: '14 d' }]
  const said = issuesOf(changed({ equipment })).join('\n')
  expect(said).toContain('Did you mean "skimmer"?')
  expect(said).toContain('Did you mean "every"?')
})

test('all issues of a file are told at once', () => {
  const text = changed({
    timeZone: 'Europe/Berln',
    vessels: [
      { ...hall.vessels[0], water: '-1 L' },
      { ...hall.vessels[1], id: 'display' },
    ],
    temperature: 25,
    feeds: [{ kind: 'flake', amount: '4', nitrogen: '107 %', phosphorus: '1.2 %' }],
    algae: [{ kind: 'hair_green', surface: 'roof', cover: 0.05 }],
  })
  const codes = issuesOf(text).map((line) => line.split(':')[0])
  expect(codes.toSorted()).toEqual(
    [
      'above-whole',
      'duplicate-id',
      'negative',
      'no-such-surface',
      'no-such-vessel',
      'no-unit',
      'unknown-time-zone',
      'wrong-type',
    ].toSorted(),
  )
})

test('no JSON whatever in a place of the file makes the reading fail without a word', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.constantFrom(...Object.keys(hall)), (value, key) => {
      for (const text of [JSON.stringify(value), changed({ [key]: value }), changed({ [key]: [value] })]) {
        const read = readSystemFile(text)
        if (!read.ok) expect(read.issues.map(issueInWords).join('')).not.toBe('')
      }
    }),
  )
})

test('filters, carbon and reactors are read in the units of people', () => {
  const read = readSystemFile(
    changed({
      equipment: [
        { kind: 'filter sock', 'changed every': '1 week', mesh: '200 µm' },
        { kind: 'activated carbon', mass: '0.2 kg', 'replaced every': '4 weeks' },
        { kind: 'organic carbon dosing', substance: 'ethanol', 'a day': '2 mL/d', brand: 'none' },
        { kind: 'denitrifying reactor', fed: 'sulphur', media: '2 L', flow: '1 L/h' },
        { kind: 'phosphate binder', 'lanthanum a day': '5 mg/d' },
        { kind: 'continuous water change', 'a day': '4 L/d' },
      ],
    }),
  )
  if (!read.ok) throw new Error(read.issues.map(issueInWords).join('\n'))
  expect(read.system.equipment).toEqual([
    { kind: 'filter sock', changed_every_days: 7, mesh_um: expect.closeTo(200, 9) },
    { kind: 'activated carbon', mass_g: 200, replaced_every_days: 28 },
    { kind: 'organic carbon dosing', substance: 'ethanol', mL_per_day: expect.closeTo(2, 9), brand: 'none' },
    { kind: 'denitrifying reactor', fed: 'sulphur', media_L: 2, flow_L_per_hour: 1 },
    { kind: 'phosphate binder', La_mg_per_day: 5 },
    { kind: 'continuous water change', L_per_day: 4 },
  ])
})

test('algae under lamps of their own and a schedule of carbon are read in the units of people', () => {
  const noon = (date: string): number => modelDay(date, 12, 'Europe/Berlin')
  const read = readSystemFile(
    changed({
      equipment: [
        {
          kind: 'refugium',
          vessel: 'sump',
          algae: 'Chaetomorpha',
          mass: '0.8 kg',
          'dry matter': '12 %',
          nitrogen: '3 %',
          phosphorus: '0.2 %',
          'lit area': '1000 cm2',
          light: '200 µmol/m2/s',
          hours: 12,
          'dark since': '2026-01-09',
          harvest: '150 g',
          'harvested every': '2 weeks',
          'last harvest': '2026-01-05',
        },
        {
          kind: 'turf scrubber',
          screen: '0.02 m2',
          light: '300 µmol/m2/s',
          hours: 14,
          'harvested every': '10 d',
        },
        {
          kind: 'organic carbon dosing',
          schedule: [
            { from: '2026-01-04', 'ethanol a day': '1 mL/d' },
            { from: '2026-02-04', 'ethanol a day': '2 mL/d' },
          ],
        },
      ],
    }),
  )
  if (!read.ok) throw new Error(read.issues.map(issueInWords).join('\n'))
  expect(read.system.equipment).toEqual([
    {
      kind: 'refugium',
      vessel: 'sump',
      algae: 'Chaetomorpha',
      wet_mass_g: 800,
      dry_fraction: expect.closeTo(0.12, 9),
      N_of_dry: expect.closeTo(0.03, 9),
      P_of_dry: expect.closeTo(0.002, 9),
      lit_area_m2: expect.closeTo(0.1, 9),
      light_umol_m2_s: 200,
      light_h_per_day: 12,
      light_off_since: noon('2026-01-09'),
      harvest_g_wet: 150,
      harvest_every_days: 14,
      last_harvest: noon('2026-01-05'),
    },
    {
      kind: 'turf scrubber',
      screen_m2: 0.02,
      light_umol_m2_s: 300,
      light_h_per_day: 14,
      harvest_every_days: 10,
    },
    {
      kind: 'organic carbon dosing',
      schedule: [
        { from_: noon('2026-01-04'), mL_ethanol_per_day: expect.closeTo(1, 9) },
        { from_: noon('2026-02-04'), mL_ethanol_per_day: expect.closeTo(2, 9) },
      ],
    },
  ])
  expect(systemDescription.safeParse(read.system).success).toBe(true)
})

test('water of a known kind and feed need no figures, other water does', () => {
  const feeds = [{ kind: 'flake', amount: '2 g/d' }]
  const water = { 'source water': { kind: 'reverse osmosis' }, 'salt mix': { kind: 'synthetic salt' } }
  const read = readSystemFile(changed({ feeds, ...water }))
  if (!read.ok) throw new Error(read.issues.map(issueInWords).join('\n'))
  expect(read.system.source_water).toEqual({ kind: 'reverse osmosis' })
  expect(read.system.feeds).toEqual([{ kind: 'flake', g_per_day: expect.closeTo(2, 9) }])
  expect(systemDescription.safeParse(read.system).success).toBe(true)
  expect(issuesOf(changed({ 'source water': { kind: 'well', nitrate: '3 mg/L NO3' } }))).toEqual([
    expect.stringMatching(
      /^missing: Source water, phosphate: it is missing\. A figure, or one of these kinds/i,
    ),
  ])
})

test('silicate of new water is read as the oxide', () => {
  const salt = { nitrate: '0 mg/L NO3', phosphate: '0 mg/L PO4', silicate: '0.2 mg/L SiO2' }
  const read = readSystemFile(changed({ 'salt mix': salt }))
  if (!read.ok) throw new Error(read.issues.map(issueInWords).join('\n'))
  expect(read.system.salt_mix.SiO2_mg_L).toBeCloseTo(0.2, 9)
})

test('a key of a refugium that is misspelt is refused, and a vessel that is not there', () => {
  const said = issuesOf(changed({ equipment: [{ kind: 'refugium', vessel: 'attic', harvets: '150 g' }] }))
  expect(said.join('\n')).toContain('Did you mean "harvest"?')
  expect(said.join('\n')).toContain('there is no vessel "attic"')
})

test('animals have the vessel that is told, and one that is not there is refused', () => {
  const snails = { kind: 'snail', taxon: 'Trochus histrio', count: 6, role: 'grazer' }
  const [{ id }] = hall.vessels
  const read = readSystemFile(changed({ animals: [{ ...snails, vessel: id }, snails] }))
  if (!read.ok) throw new Error(read.issues.map(issueInWords).join('\n'))
  expect(read.system.animals.map(({ vessel }) => vessel)).toEqual([id, undefined])
  expect(issuesOf(changed({ animals: [{ ...snails, vessel: 'attic' }] })).join('\n')).toContain(
    'there is no vessel "attic"',
  )
})

test('a ration that a letter leaves unsaid is one that the model takes wide', () => {
  const read = readSystemFile(JSON.stringify({ ...hall, unsaid: ['feeds 1, amount', 'vessels 1, water'] }))
  expect(read).toHaveProperty('system.feeds.0.untold', true)
  expect(readSystemFile(JSON.stringify(hall))).not.toHaveProperty('system.feeds.0.untold')
})

test('the schema kept for editors is what the program reads by, and takes the same file', () => {
  const kept = JSON.parse(
    readFileSync(new URL('../../schema/system-file.schema.json', import.meta.url), 'utf8'),
  )
  expect(kept).toEqual(JSON.parse(JSON.stringify(systemFileJsonSchema())))
  const validate = new Ajv({ strict: false, validateFormats: false }).compile(kept)
  expect(validate(hall)).toBe(true)
  expect(validate({ ...hall, salinty: '35 psu' })).toBe(false)
})
