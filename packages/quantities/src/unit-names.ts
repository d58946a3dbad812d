import type { Dimension } from './dimension.ts'
import { molarMass } from './molar-masses.ts'

interface NamedUnit {
  readonly dimension: Dimension
  readonly factor: number
  readonly zero?: number
}

const prefixes: Readonly<Record<string, number>> = {
  '': 1,
  k: 1e3,
  d: 1e-1,
  c: 1e-2,
  m: 1e-3,
  µ: 1e-6,
  n: 1e-9,
  p: 1e-12,
}

const prefixed: Readonly<Record<string, NamedUnit>> = {
  m: { dimension: { length: 1 }, factor: 1 },
  L: { dimension: { length: 3 }, factor: 1e-3 },
  l: { dimension: { length: 3 }, factor: 1e-3 },
  g: { dimension: { mass: 1 }, factor: 1 },
  mol: { dimension: { amount: 1 }, factor: 1 },
  eq: { dimension: { charge: 1 }, factor: 1 },
  atm: { dimension: { mass: 1, length: -1, time: -2 }, factor: 101325e3 },
  W: { dimension: { mass: 1, length: 2, time: -3 }, factor: 1e3 },
}

const length = (metres: number): NamedUnit => ({ dimension: { length: 1 }, factor: metres })
const volume = (litres: number): NamedUnit => ({ dimension: { length: 3 }, factor: litres / 1000 })
const time = (seconds: number): NamedUnit => ({ dimension: { time: 1 }, factor: seconds })
const mass = (grams: number): NamedUnit => ({ dimension: { mass: 1 }, factor: grams })
const flow = (litresPerHour: number): NamedUnit => ({
  dimension: { length: 3, time: -1 },
  factor: litresPerHour / 1000 / 3600,
})
const share = (factor: number): NamedUnit => ({ dimension: {}, factor })

/** Exact by definition: UK Weights and Measures Act 1985 and the 231 cubic inches of the US gallon. */
const US_GALLON_L = 3.785411784
const IMPERIAL_GALLON_L = 4.54609
const DAY_S = 86400

/** A degree of carbonate hardness is 10 mg CaO in a litre, and CaO binds two charges. */
const DEGREE_CARBONATE_HARDNESS_MOL_M3 = (2 * 10) / molarMass('CaO')

const plain: readonly (readonly [string, NamedUnit])[] = [
  ['s second seconds sec', time(1)],
  ['min minute minutes', time(60)],
  ['h hour hours hr hrs', time(3600)],
  ['d day days', time(DAY_S)],
  ['week weeks', time(7 * DAY_S)],
  ['month months', time((365.25 / 12) * DAY_S)],
  ['yr year years', time(365.25 * DAY_S)],
  ['litre litres liter liters', volume(1)],
  ['US_gal', volume(US_GALLON_L)],
  ['imp_gal', volume(IMPERIAL_GALLON_L)],
  // an eighth of a pint each, of 16 ounces to the US pint and 20 to the imperial
  ['US_floz', volume(US_GALLON_L / 128)],
  ['imp_floz', volume(IMPERIAL_GALLON_L / 160)],
  ['US_gph', flow(US_GALLON_L)],
  ['imp_gph', flow(IMPERIAL_GALLON_L)],
  ['in inch inches', length(0.0254)],
  ['ft foot feet', length(0.3048)],
  ['oz ounce ounces', mass(28.349523125)],
  ['lb lbs pound pounds', mass(453.59237)],
  ['°C degC', { dimension: { temperature: 1 }, factor: 1, zero: 273.15 }],
  ['°F degF', { dimension: { temperature: 1 }, factor: 5 / 9, zero: 459.67 * (5 / 9) }],
  ['K', { dimension: { temperature: 1 }, factor: 1, zero: 0 }],
  ['psu', { dimension: { salinity: 1 }, factor: 1 }],
  ['dKH', { dimension: { charge: 1, length: -3 }, factor: DEGREE_CARBONATE_HARDNESS_MOL_M3 }],
  ['pH fraction share ratio', share(1)],
  ['%', share(0.01)],
  ['‰', share(0.001)],
  // things counted: a count has no dimension
  ['animal animals individual individuals fish snail snails urchin urchins bite bites', share(1)],
]

/** Every unit by every name it has; names of two words are joined by '_', µ is U+00B5. */
const named: ReadonlyMap<string, NamedUnit> = new Map([
  ...Object.entries(prefixed).flatMap(([name, unit]) =>
    Object.entries(prefixes).map(
      ([prefix, factor]) => [prefix + name, { ...unit, factor: unit.factor * factor }] as const,
    ),
  ),
  ...plain.flatMap(([names, unit]) => names.split(' ').map((name) => [name, unit] as const)),
])

/** Every name, for tests over all of them. */
export const unitNames: readonly string[] = [...named.keys()]

export function unitNamed(name: string): NamedUnit | undefined {
  return named.get(name) ?? (name.startsWith('u') ? named.get(`µ${name.slice(1)}`) : undefined)
}

/** For the words of an error: the units without their prefixes. */
export const unitNamesShown: readonly string[] = [
  ...Object.keys(prefixed).filter((name) => name !== 'l'),
  ...plain.map(([names]) => (names.split(' ')[0] ?? names).replace('_', ' ')),
]

/** Words that say what a mass, a volume or a share is of, and change no arithmetic. */
export const remarkWords: ReadonlySet<string> = new Set(
  (
    'dry wet fresh thawed as fed of total organic inorganic body mass matter tissue skeletal shell ' +
    'feed food faeces protein algae alga macroalgae turf film crust coral animal animals fish rock sand ' +
    'carbonate sediment detritus media medium culture reactor water salt bacteria ' +
    'ash-free ash chlorophyll surface tank eaten absorbed assimilated'
  ).split(' '),
)
