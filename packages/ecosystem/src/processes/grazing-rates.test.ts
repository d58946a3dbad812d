import { grazer } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { type Offered, offeredAlone } from '../testing/offered-alone.ts'

/** Dry mass of wet algae, as the tables take it. */
const dryOfWet = 0.12

/** What one animal of the simulation eats of its best liked kind in a day, low, typical and high, g wet. */
const wet = (taxon: string, kind: string, more: Offered = {}) =>
  (['low', 'typical', 'high'] as const).map(
    (consumption) =>
      (offeredAlone(taxon, kind, { ...more, unfed: true, consumption }) ?? Number.NaN) / dryOfWet,
  )
const perBody = (taxon: string, eaten: readonly number[]): readonly number[] =>
  eaten.map((one) => (100 * one) / (grazer(taxon)?.wetMass_g ?? Number.NaN))

interface Row {
  readonly what: string
  readonly ours: readonly number[]
  /** Range as published; one number where one was. */
  readonly published: readonly [number, number]
  readonly source: string
}

const best = {
  turbo: 'Turbo fluctuosa',
  tripneustes: 'Tripneustes gratilla',
  siganus: 'Siganus virgatus',
} as const
const siganus = wet(best.siganus, 'macro')

/** Published rates beside what the simulation eats; 'read' and 'memory' say how they are known. */
const rows: readonly Row[] = [
  {
    what: 'a turban snail at 20 °C, % of body mass a day, wet',
    ours: perBody(best.turbo, wet(best.turbo, 'hair_green', { temperature_C: 20 })),
    published: [1.06, 6.08],
    source: 'Foster & Hodgson 1998, abstract read; Turbo sarmaticus as its relative',
  },
  {
    what: 'the sea hare Aplysia dactylomela, g wet a day',
    ours: wet('Aplysia dactylomela', 'macro'),
    published: [76.9, 76.9],
    source: 'Crofts, Little & Ward, abstract read',
  },
  {
    what: 'the sea hare Dolabella auricularia, g wet a day',
    ours: wet('Dolabella auricularia', 'hair_green'),
    published: [22.5, 37.4],
    source: 'Crofts, Little & Ward, abstract read',
  },
  {
    what: 'the urchin Diadema antillarum, g dry a day',
    ours: wet('Diadema antillarum', 'hair_green').map((one) => one * dryOfWet),
    published: [0.024 * 68, 0.024 * 98],
    source: 'Tuya et al. 2001, abstract read: 68 to 98 mg an hour; wet or dry is not said',
  },
  {
    what: 'a rabbitfish, g wet a day at eight hours of feeding',
    ours: siganus,
    published: [8 * 0.9, 8 * 10.1],
    source: 'Manikandan et al. 2022, abstract read; Siganus javus as its relative',
  },
  {
    what: 'a rabbitfish, % of body mass a day, wet',
    ours: perBody(best.siganus, siganus),
    published: [5, 25],
    source: 'literature of rabbitfish culture, memory',
  },
  {
    what: 'the tang Acanthurus coeruleus, g wet a day',
    ours: wet('Acanthurus coeruleus', 'hair_green'),
    published: [44, 44],
    source: 'Front Mar Sci 7, 2020, 10.3389/fmars.2020.00676, abstract read',
  },
  {
    what: 'the urchin Tripneustes gratilla, g wet a day',
    ours: wet(best.tripneustes, 'macro'),
    published: [5, 15],
    source: 'rule of thumb for urchins against invasive algae in Hawaii, memory',
  },
  {
    what: 'the urchin Diadema setosum, g dry a day',
    ours: wet('Diadema setosum', 'hair_green').map((one) => one * dryOfWet),
    published: [1.1, 1.1],
    source: 'Carreiro-Silva & McClanahan 2001, memory',
  },
  {
    what: 'the abalone Haliotis asinina, % of body mass a day, wet',
    ours: perBody('Haliotis asinina', wet('Haliotis asinina', 'macro')),
    published: [10, 35],
    source: 'Capinpin & Corre 1996, memory',
  },
  {
    what: 'amphipods, % of body mass a day, wet',
    ours: perBody('Elasmopus spp.', wet('Elasmopus spp.', 'hair_green')),
    published: [14, 84],
    source: 'Berezina, abstract read: gammarids of fresh and brackish water',
  },
]

test.each(rows)(
  '$what: the published figure lies within the spread of what is eaten here',
  ({ ours: [low, typical, high], published: [from, to] }) => {
    expect(low).toBeLessThan(typical)
    expect(typical).toBeLessThan(high)
    expect(to).toBeGreaterThanOrEqual(low)
    expect(from).toBeLessThanOrEqual(high)
  },
)

// Foster & Hodgson 1998, abstract read: 1.5 to 5.8 times as much at 20 and 25 °C as at 15 °C.
test.each([20, 25])(
  'a turban snail eats more at %i °C than at 15 °C, as much more as was measured',
  (warm) => {
    const at = (temperature_C: number): number =>
      offeredAlone(best.turbo, 'hair_green', { temperature_C, unfed: true }) ?? Number.NaN
    expect(at(warm) / at(15)).toBeGreaterThan(1.4)
    expect(at(warm) / at(15)).toBeLessThan(5.8)
  },
)

// Figures that we do not reproduce, shown as such: two contain sediment or detritus, one is a quotient of three
// numbers of a reef flat. They fail once the facts reach them.
test.each([
  // 3427 bites of 2.19 mg a day for a fish of 7.9 g (Townsend & Tibbetts 2004, abstract read).
  ['Salarias fasciatus', 'hair_green', 7.5 / 7.9],
  // 20.5 mg C per g of fish and day, at 0.3 g C per g dry (Biotropica 15:117, 1983; computed from read numbers).
  ['Acanthurus triostegus', 'turf', 0.0205 / 0.3],
] as const)('of %s the literature tells of more than our high end', (taxon, kind, published) => {
  const most = offeredAlone(taxon, kind, { unfed: true, consumption: 'high' }) ?? Number.NaN
  expect(most / (grazer(taxon)?.wetMass_g ?? Number.NaN)).toBeLessThan(published)
})
