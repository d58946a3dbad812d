import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Answer,
  parseArea,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parseTemperature,
  parseVolume,
  words,
} from './index.ts'

function value<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer))
  return answer.value
}

function complaints(answer: Answer<unknown>): readonly string[] {
  return answer.ok || answer.ask !== undefined ? [] : answer.issues.map(words)
}

test('volumes of both continents come to litres', () => {
  expect(value(parseVolume('60 L'))).toBe(60)
  expect(value(parseVolume('60,5 l'))).toBe(60.5)
  expect(value(parseVolume('~60 Litres'))).toBe(60)
  expect(value(parseVolume('1.2 m³'))).toBeCloseTo(1200, 9)
  // exact by definition of the gallons
  expect(value(parseVolume('16 US gal'))).toBeCloseTo(16 * 3.785411784, 9)
  expect(value(parseVolume('16 gallons (US)'.replace(/[()]/g, '')))).toBeCloseTo(60.566588544, 9)
  expect(value(parseVolume('10 imperial gallons'))).toBeCloseTo(45.4609, 9)
})

test('a gallon of no country is a question with two answers that read', () => {
  const answer = parseVolume('16 gal')
  expect(answer.ok).toBe(false)
  if (answer.ok || answer.ask === undefined) throw new Error('no question')
  expect(answer.ask.question).toBe('Volume: is "16 gal" in US or in imperial gallons?')
  expect(answer.ask.options.map((option) => option.answer)).toEqual(['16 US gal', '16 imp gal'])
  for (const option of answer.ask.options)
    expect(value(parseVolume(option.answer))).toBeCloseTo(16 * (option.factor ?? 0), 9)
  expect(parseFlow('200 gph').ask?.code).toBe('which-gallon')
  expect(parseVolume('16', { unit: 'gal' }).ask?.options[0]?.answer).toBe('16 US gal')
})

test('masses, areas, lengths, temperatures, durations and flows come to one unit each', () => {
  expect(value(parseMass('2 oz'))).toBeCloseTo(56.69904625, 9)
  expect(value(parseMass('1 lb'))).toBeCloseTo(453.59237, 9)
  expect(value(parseMass('0 g'))).toBe(0)
  expect(value(parseArea('120 in2'))).toBeCloseTo(120 * 0.0254 ** 2, 12)
  expect(value(parseArea('2 ft²'))).toBeCloseTo(2 * 0.3048 ** 2, 12)
  expect(value(parseArea('500 cm2'))).toBeCloseTo(0.05, 12)
  expect(value(parseLength('36 in'))).toBeCloseTo(91.44, 9)
  expect(value(parseTemperature('78F'))).toBeCloseTo(25.5555556, 6)
  expect(value(parseTemperature('25,5 °C'))).toBeCloseTo(25.5, 9)
  expect(value(parseTemperature('-1 C'))).toBeCloseTo(-1, 9)
  expect(value(parseDuration('36 h'))).toBe(1.5)
  expect(value(parseDuration('2 weeks'))).toBe(14)
  expect(value(parseFlow('800 L/h'))).toBeCloseTo(800, 9)
  expect(value(parseFlow('200 gph US'))).toBeCloseTo(757.0823568, 6)
})

test('what cannot be read says where, what and what to type', () => {
  expect(complaints(parseVolume('60 foo'))).toEqual([
    'Volume: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.',
  ])
  expect(complaints(parseVolume(' '))).toEqual([
    'Volume is empty. Give a volume above 0, such as 60 L or 16 US gal.',
  ])
  expect(complaints(parseVolume('60 kg'))).toEqual([
    'Volume: "60 kg" is in a unit of another kind. Give a volume above 0, such as 60 L or 16 US gal.',
  ])
  expect(complaints(parseMass('12 g N'))).toHaveLength(1)
  expect(complaints(parseVolume('60'))[0]).toContain('has no unit.')
  expect(complaints(parseVolume('0 L'))[0]).toContain('is 0.')
  expect(complaints(parseVolume('<60 L'))[0]).toContain('is not one number.')
})

test('all that is wrong with one input is said at once', () => {
  const answer = parseVolume('-5 foo')
  expect(answer.issues?.map(({ code }) => code)).toEqual(['unknown-unit', 'negative'])
})

test('random text comes back as a value above 0, issues or a question', () => {
  const piece = fc.constantFrom(
    '60',
    '1.',
    ',5',
    ' ',
    'L',
    'US',
    'gal',
    'gph',
    '<',
    '-',
    '~',
    'nd',
    '/',
    'h',
    'imp',
    '°F',
    '1e999',
  )
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(piece, { maxLength: 6 }).map((p) => p.join('')),
  )
  fc.assert(
    fc.property(text, fc.constantFrom(undefined, '.' as const, ',' as const), (typed, thousands) => {
      const style = thousands === undefined ? {} : { thousands }
      const answer = parseVolume(typed, style)
      if (answer.ok) expect(answer.value).toBeGreaterThan(0)
      else expect((answer.ask?.options ?? answer.issues ?? []).length).toBeGreaterThan(0)
      for (const parse of [parseTemperature, parseFlow, parseDuration, parseArea, parseMass, parseLength])
        parse(typed, style)
    }),
    { numRuns: 2000, seed: 3 },
  )
})
