import type { Issue, IssueCode, NextStep, QuestionCode } from './issue.ts'

/** The English of this package; another language is another file of this shape. */

const complaints: Readonly<Record<Exclude<IssueCode, 'empty'>, string>> = {
  'not-a-number': 'has no number that we can read.',
  'range-reversed': 'ends below where it begins.',
  negative: 'is below 0.',
  zero: 'is 0.',
  'not-one-number': 'is not one number.',
  'no-unit': 'has no unit.',
  'unknown-unit': 'has no unit we know.',
  'wrong-dimension': 'is in a unit of another kind.',
  'unit-syntax': 'does not read as a unit.',
  'unit-division': 'can be divided in two ways.',
  'too-large': 'is larger than any number we can hold.',
  'needs-density': 'counts by the kilogram of water, and the density of the water is not told.',
  'needs-hours': 'compares light at an instant with light over a day, and the hours of light are not told.',
  'needs-spectrum':
    'is light as the eye weighs it; without the spectrum of the lamp it is no count of photons.',
  'needs-sea-water': 'is on another scale; between the two stand the equations of sea water.',
}

const steps: Readonly<Record<NextStep, string>> = {
  'write-unit': 'Write it with',
  'write-brackets': 'Write g/(m2 d) or g m⁻² d⁻¹.',
  'give-volume': 'Give a volume above 0, such as 60 L or 16 US gal.',
  'give-mass': 'Give a mass, such as 12 g or 2 oz.',
  'give-area': 'Give an area above 0, such as 0.5 m2 or 120 in2.',
  'give-length': 'Give a length above 0, such as 90 cm or 36 in.',
  'give-temperature': 'Give a temperature, such as 25.5 °C or 78 °F.',
  'give-duration': 'Give a duration, such as 12 h or 3 d.',
  'give-flow': 'Give a flow, such as 800 L/h or 200 US gph.',
  'give-nitrate': 'Give nitrate, such as 5 mg/L NO3, 1.1 mg/L NO3-N or <0.5 mg/L NO3.',
  'give-nitrite': 'Give nitrite, such as 0.1 mg/L NO2 or 0.03 mg/L NO2-N.',
  'give-ammonia': 'Give total ammonia, such as 0.2 mg/L NH3-N, 0.25 mg/L NH4 or <0.05 mg/L NH3-N.',
  'give-phosphate': 'Give phosphate, such as 0.05 mg/L PO4, 16 ppb P or <0.03 mg/L PO4.',
  'give-alkalinity': 'Give alkalinity, such as 8.4 dKH, 3 meq/L or 150 ppm CaCO3.',
  'give-salinity': 'Give salinity, such as 35 psu or 1.026 SG 25/25 °C.',
  'give-silicate': 'Give silicate, such as 0.2 mg/L SiO2 or 90 ppb Si.',
  'give-calcium': 'Give calcium, such as 420 mg/L or 10.5 mmol/L.',
  'give-magnesium': 'Give magnesium, such as 1310 mg/L or 53.9 mmol/L.',
  'give-potassium': 'Give potassium, such as 400 mg/L or 10.2 mmol/L.',
  'give-power': 'Give a power, such as 60 W or 0.06 kW.',
  'give-light': 'Give light, such as 200 µmol/m²/s, or a daily sum with the hours of light.',
  'give-daily-light': 'Give light over a day, such as 8 mol/m²/d, or light at an instant with its hours.',
  'give-density': 'Give a density above 0, such as 1.023 kg/L.',
  'tell-density': 'Give it by the litre, or tell the density, such as 1.023 kg/L.',
  'give-same-scale': 'Choose a unit of the same scale:',
}

/** What is wrong and what to do, in one or two sentences. */
export function words(issue: Issue): string {
  const complaint =
    issue.code === 'empty'
      ? `${issue.where} is empty.`
      : `${issue.where}: "${issue.got}" ${complaints[issue.code]}`
  const lists = issue.next === 'write-unit' || issue.next === 'give-same-scale'
  const accepted = lists ? ` ${issue.accepted.join(', ')}.` : ''
  return `${complaint} ${steps[issue.next]}${accepted}`
}

const questions: Readonly<Record<QuestionCode, string>> = {
  'which-gallon': 'in US or in imperial gallons?',
  'which-fluid-ounce': 'in US or in imperial fluid ounces?',
  'which-silicate':
    'of silica (SiO2), of silicon, or of another silicate? The kit or its leaflet says which.',
  'which-form': 'of the ion, or of the atom in it? The kit or its leaflet says which.',
  'which-alkalinity': 'as calcium carbonate or as bicarbonate?',
  'which-reference-temperatures':
    'at 25/25 °C, or at which two temperatures? They are printed on the instrument.',
  'which-conductivity-temperature':
    'worked out by the meter for 25 °C, or as it is in the water? Then write the temperature behind it.',
  'which-comma': 'with a decimal comma, or with a comma between thousands?',
  'what-trace':
    'nothing seen, or a colour below the first mark of the kit? Then write "<" and that mark, such as <0.03.',
}

export function question(code: QuestionCode, where: string, got: string): string {
  return `${where}: is "${got}" ${questions[code]}`
}
