import {
  type Answer,
  type Asked,
  convert,
  type Nutrient,
  parseArea,
  parseConcentration,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parseSalinity,
  parseTemperature,
  parseUnit,
  parseVolume,
  type Issue as QuantityIssue,
  readUnit,
  sameDimension,
} from '@holdfast/quantities'

import { z } from '../entries/schema.ts'
import { salinityOfSpecificGravity } from '../sheet/specific-gravity.ts'

/** What a parser found wrong with a text, on its way through the schema. */
export type TextFault =
  | { readonly by: 'quantities'; readonly issue: QuantityIssue }
  | { readonly by: 'quantities'; readonly ask: Asked['ask'] }
  | { readonly by: 'here'; readonly code: string; readonly got: string; readonly accepted: string }

/** The key under which a fault travels in an issue of the schema. */
export const faultKey = 'fault'

type Outcome = { readonly value: number } | { readonly faults: readonly TextFault[] }

/** A text with its unit in the file, a number in the unit named behind it. */
function measured(says: string, example: string, read: (text: string) => Outcome) {
  const value = z.transform((typed: string, context) => {
    const outcome = read(typed)
    if ('value' in outcome) return outcome.value
    for (const fault of outcome.faults) {
      context.issues.push({ code: 'custom', input: typed, params: { [faultKey]: fault } })
    }
    return z.NEVER
  })
  return z.pipe(z.string(), value).check(z.meta({ description: says, examples: [example] }))
}

function outcomeOf<Value>(answer: Answer<Value>, numberOf: (value: Value) => Outcome): Outcome {
  if (answer.ok) return numberOf(answer.value)
  if (answer.issues) return { faults: answer.issues.map((issue) => ({ by: 'quantities', issue })) }
  return { faults: [{ by: 'quantities', ask: answer.ask }] }
}

const plainly = (answer: Answer<number>, factor = 1): Outcome =>
  outcomeOf(answer, (value) => ({ value: value * factor }))

const positive = (outcome: Outcome, got: string, accepted: string): Outcome =>
  'value' in outcome && outcome.value <= 0
    ? { faults: [{ by: 'here', code: 'zero', got: `"${got}" is not above 0`, accepted }] }
    : outcome

/** Litres. */
export const volume = measured('A volume, net of rock and sand', '450 L', (text) =>
  plainly(parseVolume(text)),
)
/** Kilograms, above 0. */
export const kilograms = measured('A mass', '45 kg', (text) =>
  positive(plainly(parseMass(text), 1 / 1000), text, 'A mass above 0, such as 45 kg.'),
)
/** Grams, above 0. */
export const grams = measured('A mass', '200 g', (text) =>
  positive(plainly(parseMass(text)), text, 'A mass above 0, such as 200 g.'),
)
/** Square metres. */
export const area = measured('An area', '2 m2', (text) => plainly(parseArea(text)))
/** Centimetres. */
export const centimetres = measured('A length', '150 cm', (text) => plainly(parseLength(text)))
/** Millimetres. */
export const millimetres = measured('A width', '6 mm', (text) => plainly(parseLength(text), 10))
/** Micrometres. */
export const micrometres = measured('A mesh', '200 µm', (text) => plainly(parseLength(text), 10_000))
/** °C. */
export const temperature = measured('A temperature', '25.5 °C', (text) => plainly(parseTemperature(text)))
/** Days. */
export const age = measured('An age', '800 d', (text) => plainly(parseDuration(text)))
/** Days, above 0. */
export const interval = measured('A span of time between two occasions', '14 d', (text) =>
  positive(plainly(parseDuration(text)), text, 'A span above 0, such as 14 d.'),
)
/** L/h, above 0. */
export const flow = measured('A flow', '3000 L/h', (text) =>
  positive(plainly(parseFlow(text)), text, 'A flow above 0, such as 3000 L/h.'),
)
/** L/d. */
export const litresPerDay = measured('A volume of water a day', '8 L/d', (text) =>
  plainly(parseFlow(text), 24),
)
/** µmol photons m⁻² s⁻¹. */
export const light = measured('Light at the surface while the lamp is on', '200 µmol/m2/s', (text) =>
  inUnit(text, '200 µmol/m2/s', ['µmol/m2/s', 'µmol photons/m2/s']),
)
/** g/d. */
export const gramsPerDay = measured('What is fed a day, as fed', '4 g/d', (text) =>
  inUnit(text, '4 g/d', ['g/d']),
)
/** g of dry mass a day. */
export const dryGramsPerDay = measured('Dry mass a day', '0.3 g dry/d', (text) =>
  inUnit(text, '0.3 g dry/d', ['g dry/d', 'g/d dry']),
)
/** mL/d. */
export const millilitresPerDay = measured('What is dosed a day', '2 mL/d', (text) =>
  plainly(parseFlow(text), 24_000),
)
/** mg/d. */
export const milligramsPerDay = measured('What is dosed a day', '5 mg/d', (text) =>
  inUnit(text, '5 mg/d', ['mg/d']),
)
/** A share, 0 to 1. */
export const massShare = share('A share of the mass as fed', '7.2 %')
/** A share of dry mass, 0 to 1. */
export const dryMassShare = share('A share of the dry mass', '3 %')
/** Dry mass as a share of drained mass, 0 to 1. */
export const drainedShare = share('Dry mass as a share of the drained mass', '12 %')
/** Drained mass, g. */
export const drainedGrams = measured('A mass, shaken and drained', '800 g', (text) =>
  positive(plainly(parseMass(text)), text, 'A mass above 0, such as 800 g.'),
)
/** mg P per g of dry media. */
export const phosphorusPerGram = measured('Phosphorus bound by a gram of dry media', '4 mg P/g', (text) =>
  inUnit(text, '4 mg P/g', ['mg P/g']),
)
/** Practical salinity. */
export const salinity = measured('Salinity', '35 psu', (text) =>
  outcomeOf(parseSalinity(text), (said) => {
    if (said.scale === 'practical') return { value: said.psu }
    const value = salinityOfSpecificGravity(said.specificGravity, said.reference)
    if (value !== undefined) return { value }
    return {
      faults: [
        { by: 'here', code: 'no-such-water', got: `"${text}" is no sea water`, accepted: 'Such as 35 psu.' },
      ],
    }
  }),
)
/** mg/L of the ion. */
export const nitrate = dissolved('nitrate', '0 mg/L NO3')
/** mg/L of the ion. */
export const phosphate = dissolved('phosphate', '0 mg/L PO4')
/** mg/L of SiO2. */
export const silicate = dissolved('silicate', '0.2 mg/L SiO2')

function dissolved(nutrient: Nutrient | 'silicate', example: string) {
  return measured(`${nutrient} with unit and form`, example, (text) =>
    outcomeOf(parseConcentration(nutrient, text), ({ stated }) => {
      if (stated.is === 'exact' || stated.is === 'about') return { value: stated.value }
      const got = `"${text}" is not one number`
      return {
        faults: [{ by: 'here', code: 'not-one-number', got, accepted: `One number, such as ${example}.` }],
      }
    }),
  )
}

function share(says: string, example: string) {
  return measured(says, example, (text) => {
    const outcome = inUnit(text, example, ['fraction'])
    const got = `"${text}" is more than the whole`
    return 'value' in outcome && outcome.value > 1
      ? { faults: [{ by: 'here', code: 'above-whole', got, accepted: 'Up to 100 %.' }] }
      : outcome
  })
}

/** A number not below 0 in the first of the units, from any unit of the same dimension as one of them. */
function inUnit(text: string, example: string, units: readonly string[]): Outcome {
  const accepted = `A number not below 0 with its unit, such as ${example}.`
  const [, figure, written] = /^\s*(-?\d+(?:[.,]\d+)?)\s*(.*?)\s*$/.exec(text) ?? []
  const fault = (code: string, got: string): Outcome => ({ faults: [{ by: 'here', code, got, accepted }] })
  if (figure === undefined) return fault('not-a-number', `"${text}" has no number that we can read`)
  const value = Number(figure.replace(',', '.'))
  if (value < 0) return fault('negative', `"${text}" is below 0`)
  if (written === '') return fault('no-unit', `"${text}" has no unit`)
  const unit = readUnit(written)
  if (!unit.ok) return fault('unknown-unit', `"${text}" has no unit we know`)
  const { value: read } = unit
  const kin = units.find((one) => sameDimension(read, parseUnit(one)))
  if (kin === undefined) return fault('wrong-dimension', `"${text}" is in a unit of another kind`)
  return { value: convert(value, written, kin) }
}
