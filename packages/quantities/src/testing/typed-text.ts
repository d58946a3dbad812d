import fc from 'fast-check'
import { quantities, quantityNames, type ReadingOptions } from '../index.ts'

/** Pieces of what people type: right ones, nearly right ones, and what has no place there. */
const figures = [
  ...[
    '5',
    '0',
    '1,5',
    '0.03',
    '.05',
    '8.',
    '1,310',
    '1.310',
    '12.345,6',
    '1 000',
    "1'000",
    '1e3',
    '1e999',
    '-2',
  ],
  ...['−2', '–2', '１２', '٣', '½', '1/2', '00', '-0', '1e-320', '1e308', 'NaN', 'Infinity', '0x10', '5±1'],
]
const signs = ['<', '< ', '≤', '<=', '>', '≥', '~', '≈', 'ca. ', 'about ', '＜', '<<', '+', '-', '--']
const joins = ['-', ' – ', '..', ' to ', ' bis ', '…', '—']
const absences = ['ND', 'n.d.', 'n.n.', 'undetectable', 'trace', 'Spuren', 'bdl', '<LOD', 'none', '?', '-']
const gaps = ['', ' ', '\u00a0', '\u202f', '  ', '\t', '\u200b', '\n']
const spellings = [
  ...[
    'gal',
    'gallons (US)',
    'gph',
    'gpd',
    'fl oz',
    'fl. oz. UK',
    'ML',
    'KG',
    'kw',
    'MW',
    'oz',
    'lux',
    'PAR',
    'F',
  ],
  ...[
    'mg/l',
    'ug/L',
    'mg L⁻¹',
    'mg·L-1',
    'µM',
    'uM',
    'mM',
    'mg NO3/L',
    'ppm as N',
    'ppm (P)',
    '°dH',
    'mval/l',
  ],
  ...[
    'SG',
    'sg 20/4',
    'SG 19/19 °C',
    '25/25',
    'mS/cm',
    'µS/cm @ 77F',
    'mS/cm at 25 C',
    '‰',
    '%',
    '℃',
    '°',
    'd⁻¹',
  ],
]
const junk = [
  'foo',
  '(',
  ')',
  '/',
  '//',
  '^',
  '⁻',
  '²',
  '∞',
  '🐟',
  '\u0000',
  '\ud800',
  '"',
  '$&',
  '__proto__',
  'constructor',
]

const units = quantityNames.flatMap((name) => quantities[name].units)
const forms = [
  ...quantityNames.flatMap((name) => quantities[name].forms),
  'NO₃⁻',
  'PO43-',
  'as N',
  'NH4+',
  'XY',
]

const figure = fc.oneof(
  fc.constantFrom(...figures),
  fc.double().map(String),
  fc.double({ noNaN: true }).map((value) => String(value).replace('.', ',')),
  fc.tuple(fc.constantFrom(...signs), fc.constantFrom(...figures)).map((parts) => parts.join('')),
  fc
    .tuple(fc.constantFrom(...figures), fc.constantFrom(...joins), fc.constantFrom(...figures))
    .map((parts) => parts.join('')),
  fc.constantFrom(...absences),
)
const unit = fc.constantFrom(...units, ...spellings, '')
const form = fc.constantFrom(...forms, '', '', '')
const gap = fc.constantFrom(...gaps)

/** A figure, a unit and a form in their order, each of them right or not. */
const sentence = fc.tuple(figure, gap, unit, gap, form).map((parts) => parts.join(''))

/** The pieces in any order. */
const jumble = fc
  .array(fc.oneof(figure, gap, unit, form, fc.constantFrom(...signs, ...joins, ...junk)), { maxLength: 7 })
  .map((parts) => parts.join(''))

/** A sentence with one character taken out, or another put in. */
const slip = fc
  .tuple(sentence, fc.nat(40), fc.option(fc.string({ unit: 'binary', maxLength: 1 })))
  .map(([text, at, put]) => text.slice(0, at) + (put ?? '') + text.slice(put === null ? at + 1 : at))

/** What may stand in a field. */
export const typedText: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: sentence },
  { weight: 2, arbitrary: slip },
  { weight: 2, arbitrary: jumble },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
)

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 })

/** What the place of the text may tell about it. */
export const placeOfText: fc.Arbitrary<ReadingOptions> = fc
  .record({
    unit: maybe(unit),
    form: maybe(fc.constantFrom(...forms)),
    thousands: maybe(fc.constantFrom('.' as const, ',' as const, ' ' as const, "'" as const)),
    decimal: maybe(fc.constantFrom('.' as const, ',' as const)),
    step: maybe(fc.constantFrom(0.01, 5)),
    density: maybe(fc.constantFrom(1.0233, 0, -1, Number.NaN)),
    hoursPerDay: maybe(fc.constantFrom(10, 0, 25)),
    temperature: maybe(fc.constantFrom(25)),
    reference: maybe(fc.constantFrom('25/25 °C', '20/4', 'foo')),
  })
  .map((told) => JSON.parse(JSON.stringify(told), (_, value) => value ?? undefined))
