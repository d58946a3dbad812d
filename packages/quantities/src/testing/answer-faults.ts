import {
  type Answer,
  type NumberStyle,
  parseArea,
  parseConcentration,
  parseDensity,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parsePower,
  parseSalinity,
  parseTemperature,
  parseVolume,
  quantityNames,
  type ReadingOptions,
  readingInCommonUnits,
  readQuantity,
  readUnit,
  words,
} from '../index.ts'

/** Parsers of one number, which take less than `readQuantity` and so answer for themselves. */
const ofOneNumber: readonly ((text: string, style: NumberStyle) => Answer<number>)[] = [
  parseArea,
  parseDensity,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parsePower,
  parseTemperature,
  parseVolume,
]

/**
 * Hands a text to every parser. Each is to give a finite value, a question whose options can be read, or
 * issues that can be put in words.
 *
 * @returns a line for each fault; none is what is hoped for
 */
export function answerFaults(text: string, place: ReadingOptions): readonly string[] {
  const faults: string[] = []
  const check = (name: string, work: () => readonly string[]): void => {
    try {
      faults.push(...work().map((fault) => `${name}: ${fault}`))
    } catch (error) {
      faults.push(`${name}: threw ${error}`)
    }
  }
  for (const name of quantityNames)
    check(name, () => {
      const answer = readQuantity(name, text, place)
      const shown = answer.ok ? readingInCommonUnits(name, answer.value, place) : []
      const again = (typed: string) => readQuantity(name, typed, place)
      return [...faultsOf(answer, again), ...shown.flatMap(notFinite)]
    })
  const { thousands, decimal } = place
  const style = { ...(thousands && { thousands }), ...(decimal && { decimal }) }
  for (const parse of ofOneNumber)
    check(parse.name, () => faultsOf(parse(text, style), (typed) => parse(typed, style)))
  check('parseSalinity', () => faultsOf(parseSalinity(text, style), (typed) => parseSalinity(typed, style)))
  check('parseConcentration', () => faultsOf(parseConcentration('nitrate', text, style)))
  check('readUnit', () => faultsOf(readUnit(text)))
  return faults
}

/** A figure at the ends of what a double holds may be lost in another unit. */
const lost: readonly string[] = ['too-large', 'zero']

function faultsOf<T>(answer: Answer<T>, again?: (typed: string) => Answer<T>): readonly string[] {
  if (answer.ok) return notFinite(answer.value)
  if (answer.issues !== undefined) {
    if (answer.issues.length === 0) return ['refused without a reason']
    // what was typed may hold any word
    const said = answer.issues.map((issue) => words({ ...issue, got: '' }))
    return said.filter((one) => /undefined|\bNaN\b|^\s*$/.test(one)).map((one) => `says ${one}`)
  }
  const { options, question } = answer.ask
  if (options.length === 0 || question.includes('undefined')) return [`asks "${question}" with no answer`]
  return options.flatMap(({ answer: typed, factor }) => {
    const next = again?.(typed)
    const known = next?.issues?.map(({ code }) => code).filter((code) => !lost.includes(code)) ?? []
    return [
      ...(known.length > 0 ? [`offers "${typed}" and refuses it: ${known.join(', ')}`] : []),
      ...(factor !== undefined && !(Number.isFinite(factor) && factor > 0) ? [`factor ${factor}`] : []),
    ]
  })
}

/** Numbers that are none, however deep they lie. */
function notFinite(value: unknown): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`holds ${value}`]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(notFinite)
}
