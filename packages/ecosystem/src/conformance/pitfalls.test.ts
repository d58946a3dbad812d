/** Slips that builders of such models make, where no process has the check beside it. */
import { readFileSync } from 'node:fs'
import { convert, molarMass } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { stateId } from '../assemble/model.ts'
import { moved, run } from '../testing/run.ts'
import { box, plate, reef } from '../testing/systems.ts'

test('evaporation made up with pure water leaves every amount as it is', () => {
  const { course } = run({ system: { ...box, evaporation_L_per_day: 2 }, days: 30 })
  for (const id of ['water.nitrate/N', 'water.phosphate/P'])
    expect(course(id)[30] / course(id)[0]).toBeCloseTo(1, 12)
})

test('before each change nitrate ends at what is added in between over the part changed, plus the new water', () => {
  const dose_g = 0.05
  const days = Array.from({ length: 100 }, (_, day) => day)
  const { concentrations } = run({
    system: box,
    days: 100,
    samples: [99.4],
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
    events: days.flatMap((day) => [
      { day: day + 0.2, kind: 'dose' as const, substance: 'sodium nitrate' as const, mass_g: dose_g },
      {
        day: day + 0.5,
        kind: 'water change' as const,
        volume_L: 10,
        water: { NO3_mg_L: 3, PO4_mg_L: 0 },
      },
    ]),
  })
  const added_mg_L = (dose_g * 1000 * molarMass('NO3')) / molarMass('NaNO3') / 50
  expect(convert(concentrations('water.nitrate/N')[0], 'µmol L⁻¹', 'mg NO3 L⁻¹')).toBeCloseTo(
    added_mg_L / 0.2 + 3,
    6,
  )
})

// 45 % protein at 6.25 g of protein for a gram of N; thawed mysids at 5.6 % protein (within the 5 to 10.5 % of the feeds).
test.each([
  { kind: 'dry pellet', N_mass_fraction: 0.45 / 6.25, mg: 72 },
  { kind: 'frozen mysids', N_mass_fraction: 0.009, mg: 9 },
])('a gram of $kind brings $mg mg of nitrogen', ({ kind, N_mass_fraction, mg }) => {
  const { ledger } = run({
    system: { ...box, feeds: [{ kind, g_per_day: 1, N_mass_fraction, P_mass_fraction: 0.001 }] },
    days: 1,
  })
  expect((moved(ledger, { atom: 'N', from: 'outside.feed' }) * molarMass('N')) / 1000).toBeCloseTo(mg, 6)
})

describe('algae taken off by hand', () => {
  const bare = {
    ...box,
    surfaces: [{ ...plate, light_umol_m2_s: 0 }],
    algae: [{ kind: 'hair_green', surface: 'plate', cover: 0.5 }],
  }
  const removed = (leftToDrift: boolean) =>
    run({
      system: bare,
      days: 1.001,
      events: [
        { day: 1, kind: 'hand removal', surface: 'plate', algae: 'hair_green', share: 0.9, leftToDrift },
      ],
    }).ledger
  const taken = (atom: string, leftToDrift: boolean, to: string): number =>
    moved(removed(leftToDrift), { process: 'hand removal', atom, to })

  test.each(['N', 'P', 'C'])(
    'and left to drift are waste of the same %s that a siphon would take out',
    (atom) => {
      expect(taken(atom, false, 'outside.hand-removed')).toBeGreaterThan(0)
      expect(taken(atom, true, 'water.particles')).toBeCloseTo(taken(atom, false, 'outside.hand-removed'), 6)
      expect(taken(atom, true, 'outside.hand-removed')).toBe(0)
      expect(taken(atom, false, 'water.particles')).toBe(0)
    },
  )
})

// Freundlich with an exponent near a third (Golterman 1995, abstract read): a thirtieth of the phosphate, a third of the load.
test('ferric media hold well under half as much at 0.03 mg/L phosphate as at 1 mg/L', () => {
  const held = (phosphate_mg_L: number): number =>
    run({
      system: {
        ...box,
        vessels: [{ id: 'display', kind: 'display', volume_L: 10_000 }],
        equipment: [{ kind: 'ferric media reactor', mass_g: 10, flow_L_per_hour: 1000 }],
      },
      days: 60,
      opening: { nitrate_mg_L: 0, phosphate_mg_L },
    }).course('media.ferric/P')[60]
  expect(held(0.03)).toBeGreaterThan(0)
  expect(held(0.03)).toBeLessThan(0.45 * held(1))
})

// A glass that holds a fifth less water than its keeper thought.
test('a fifth less water makes a dose a quarter stronger and feeds not a gram more', () => {
  const inWater = (volume_L: number) => {
    const { concentrations, ledger } = run({
      system: {
        ...box,
        vessels: [{ id: 'display', kind: 'display', volume_L }],
        feeds: [{ kind: 'dry pellet', g_per_day: 1, N_mass_fraction: 0.07, P_mass_fraction: 0.01 }],
      },
      days: 2,
      opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
      samples: [2],
      events: [{ day: 1, kind: 'dose', substance: 'sodium nitrate', mass_g: 1 }],
    })
    return {
      nitrate: concentrations('water.nitrate/N')[0],
      fed: moved(ledger, { atom: 'N', from: 'outside.feed' }),
    }
  }
  const [told, actual] = [inWater(100), inWater(80)]
  expect(actual.nitrate / told.nitrate).toBeCloseTo(1.25, 6)
  expect(actual.fed / told.fed).toBeCloseTo(1, 12)
})

describe('in a level year of the reef', () => {
  const { marks, ledger, model } = run({ system: reef, days: 1460, samples: [], marks: [1095, 1460] })

  test.each(['N', 'P', 'C'] as const)(
    'all that leaves of %s is what came in, less what the stocks gained: nothing leaves twice',
    (atom) => {
      const outside = (account: string): boolean => account.startsWith('outside.')
      const rows = ledger.rows.filter((row) => row.atom === atom)
      const crossing = (from: boolean, to: boolean): number =>
        rows
          .filter((row) => outside(row.from) === from && outside(row.to) === to)
          .reduce((sum, { amount_umol }) => sum + amount_umol, 0)
      const [came, left] = [crossing(true, false), crossing(false, true)]
      const stocks = marks.map(({ states }) =>
        model.states.reduce(
          (sum, entry, i) =>
            entry.kind === 'atoms' && entry.atom === atom && entry.account.side === 'inside'
              ? sum + states[i]
              : sum,
          0,
        ),
      )
      const gained = stocks[1] - stocks[0]
      expect(Math.abs(came - left - gained) / came).toBeLessThan(1e-9)
      // Bone and chalk only gain, as good as gone.
      const locked = model.states.findIndex((entry) => stateId(entry) === `bed.mineral/${atom}`)
      const kept = locked < 0 ? 0 : marks[1].states[locked] - marks[0].states[locked]
      expect(Math.abs(gained - kept) / came).toBeLessThan(0.1)
    },
  )

  test('what algae take up stays inside: of a bed only its harvest crosses the border', () => {
    const idOf = (index: number): string => stateId(model.states[index])
    const ofBeds = model.fluxes
      .filter(({ atom, process }) => (atom === 'N' || atom === 'P') && process.id.startsWith('bed-'))
      .flatMap(({ from, to }) => [idOf(from), idOf(to)])
    expect(ofBeds.length).toBeGreaterThan(10)
    expect(ofBeds.filter((id) => id.startsWith('outside.'))).toEqual([])
    const harvested = ledger.rows.filter(({ to }) => /^outside\.(refugium|scrubber)-harvest$/.test(to))
    expect(new Set(harvested.map(({ process }) => process))).toEqual(new Set(['harvest']))
  })

  test('carbon dosing takes no nitrogen out: what leaves is in the foam, once', () => {
    const ofBacteria = ledger.rows.filter(
      ({ from, to }) => from === 'water.bacteria' && to.startsWith('outside.'),
    )
    expect(ofBacteria.filter(({ atom }) => atom === 'N').map(({ process }) => process)).not.toContain(
      'carbon-dosing',
    )
    const out = new Set(ofBacteria.filter(({ atom }) => atom === 'N').map(({ to }) => to))
    expect([...out].sort()).toEqual(['outside.discarded-water', 'outside.skimmate'])
  })
})

/** Where each mistake that the simulation decides is looked for: a file, and tests of it. */
const CASES: Readonly<Record<string, readonly (readonly [file: string, test: string])[]>> = {
  '7 water volume taken from the glass': [
    ['conformance/pitfalls', 'a fifth less water makes a dose a quarter stronger'],
    ['events/water-change', 'five changes of a fifth leave 32.8 %'],
  ],
  '9 exports added up twice': [
    ['conformance/pitfalls', 'all that leaves of %s is what came in'],
    ['conformance/pitfalls', 'of a bed only its harvest crosses the border'],
    ['conformance/pitfalls', 'carbon dosing takes no nitrogen out'],
    ['simulate/conservation', 'loses and makes no %s, inside and outside together'],
    ['processes/bacterial-growth', 'that no foam takes stay: without a skimmer nothing is exported'],
  ],
  '10 a skimmer that removes ions': [
    ['processes/foam-fractionation', 'takes neither nitrate nor phosphate in thirty days'],
  ],
  '11 a pad that exports on contact': [
    ['processes/mechanical-filtration', 'takes the less out the longer it waits'],
    ['processes/mechanical-filtration', 'that is never changed takes nothing out'],
  ],
  '12 grazers booked as export': [
    ['processes/grazing', 'grazers hold down, they do not export'],
    ['processes/crew-turnover', 'rot in the system where nobody took them out'],
  ],
  '13 arithmetic of water changes': [
    ['events/water-change', 'five changes of a fifth leave 32.8 %'],
    ['conformance/pitfalls', 'before each change nitrate ends at'],
    ['conformance/pitfalls', 'evaporation made up with pure water leaves every amount as it is'],
  ],
  '14 top-off forgotten': [['processes/top-off', 'raises nitrate by 1.2 mg/L a day']],
  '15 feed as so much nitrate': [
    ['conformance/pitfalls', 'a gram of $kind brings $mg mg of nitrogen'],
    ['processes/feeding', 'a grown fish keeps a few per cent of the nitrogen at most'],
    ['processes/feeding', 'that of a growing one well above the feed'],
  ],
  '16 the dead and the die-back forgotten': [
    ['processes/cultivated-beds', 'stops growing at once'],
    ['processes/cultivated-beds', 'within three days nothing more'],
    ['processes/cultivated-beds', 'becomes a source, phosphorus ahead of nitrogen'],
    ['processes/cultivated-beds', 'gives back to the water exactly what it loses'],
    ['conformance/pitfalls', 'and left to drift are waste of the same %s'],
  ],
  '17 rock as inert': [
    ['processes/carbonate-sorption', 'comes back from loaded rock within two weeks'],
    ['processes/carbonate-sorption', 'from clean quarried rock none comes back'],
    ['processes/carbonate-sorption', 'the fast part comes back within hours and the slow part takes weeks'],
    ['processes/leaching', 'goes on giving phosphate after three months'],
  ],
  '18 ferric media as a constant rate': [
    ['processes/ferric-media', 'twice the media last about twice as long'],
    ['processes/ferric-media', 'loaded media give phosphate back to poorer water'],
    ['conformance/pitfalls', 'hold well under half as much at 0.03 mg/L'],
    ['processes/ferric-media', 'of silicon media hold $less less phosphate'],
  ],
  '19 un-ionised ammonia': [['derived/derived', 'is un-ionised at pH 8 and 25 °C']],
  '20 the cycle drawn': [
    ['conformance/cycling', 'has its peaks in order: ammonia, nitrite, nitrate'],
    ['conformance/cycling', 'never shows more nitrogen in the water than was put in'],
    ['conformance/cycling', 'from 5 to 10 weeks down to 3 to 6'],
    ['conformance/cycling', 'is slower at 20 °C than at 26'],
    ['processes/nitrification', 'has ammonia oxidised before nitrite is'],
  ],
  '21 growth without limit, or on concentration alone': [
    ['processes/ground', 'all kinds together never take more than the ground there is'],
    ['processes/bacterial-growth', 'without phosphate twice the carbon moves nitrate by less than a step'],
    ['processes/algal-growth', 'a lit surface that nobody grazes grows over in poor water'],
    ['processes/algal-growth', 'is half in as much nitrogen as the table says'],
  ],
  '22 grazers as a number per litre': [
    ['processes/grazing', 'a surface behind a comb of 5 mm gets no grazing from a snail of 3 cm'],
    ['processes/grazing', 'a bristletooth takes little of hair algae of 12 mm'],
    ['processes/crew-turnover', 'goes hungry and dies off, where six live on'],
  ],
  '23 bands that nobody can set': [
    ['../../inference/src/settable', 'is drawn from the number of the keeper where it is set'],
    ['../../inference/src/settable', 'is set and moves what rests on it'],
  ],
}

test.each(Object.entries(CASES))('%s: has its checks', (_, checks) => {
  for (const [file, title] of checks) {
    const source = readFileSync(new URL(`../${file}.test.ts`, import.meta.url), 'utf8')
    // Its own name as a title, not as a line of this list.
    const titles = [...source.matchAll(/(?<!\[)['"]([^'"\n]{12,})['"],?\s*(?:\n\s*)?(?:async )?\(/g)].map(
      ([, found]) => found,
    )
    expect(
      titles.filter((found) => found?.includes(title)),
      `${file}: ${title}`,
    ).toHaveLength(1)
  }
})
