import {
  type Asked,
  convert,
  parseSalinity,
  parseTemperature,
  parseVolume,
  readUnit,
  sameDimension,
  words,
} from '@holdfast/quantities'
import { type InputName, inputNamed, waterInputs } from '@holdfast/seawater'

/** A number in the unit of its input, a word as it stands, what must be asked, or what is wrong in words. */
export type TypedInput = { readonly value: number | string } | { readonly wrong: string } | Asked

const inputNames = Object.keys(waterInputs) as readonly InputName[]
const salinities: readonly InputName[] = ['S', 'S1', 'S2', 'S_new', 'S_target']

/**
 * What was typed for an input of sea water. A bare number is in the unit of the input; another unit of its
 * kind is turned into that one.
 *
 * @example typedInput('t', '77 °F') // 25 °C
 * @example typedInput('volume_L', '20 gal') // asks which gallon
 */
export function typedInput(name: string, typed: string): TypedInput {
  if (/^[-+]?\d{1,3}(,\d{3})+$/.test(typed)) return whichComma(name, typed)
  const bare = Number(typed.replace(',', '.'))
  if (!Number.isNaN(bare)) return { value: bare }
  const known = inputNames.find((each) => each === name)
  if (known === undefined) return { value: typed }
  const input = inputNamed(known)
  const found = /^(?<figure>[-+]?[\d.,]+)\s*(?<unit>.+)$/.exec(typed)?.groups
  if ('choices' in input || found === undefined) return { value: typed }
  if (input.unit === 'degC') return read(parseTemperature(typed, { where: name }))
  if (input.unit === 'L') return read(parseVolume(typed, { where: name }))
  if (salinities.includes(known)) return salinity(name, typed)
  return inOwnUnit(name, input.unit, found.figure ?? '', found.unit ?? '')
}

function read(answer: ReturnType<typeof parseVolume> | ReturnType<typeof parseTemperature>): TypedInput {
  if (answer.ok) return { value: answer.value }
  return answer.ask ? answer : { wrong: answer.issues.map(words).join('\n') }
}

function salinity(name: string, typed: string): TypedInput {
  const answer = parseSalinity(typed, { where: name })
  if (answer.issues !== undefined) return { wrong: answer.issues.map(words).join('\n') }
  if (answer.ok && answer.value.scale === 'practical') return { value: answer.value.psu }
  if (answer.ask !== undefined && answer.ask.code === 'which-comma') return answer
  const next = 'Give practical salinity, such as 35 or "35 ppt"; salinity_from_specific_gravity finds it.'
  return { wrong: `${name}: "${typed}" is a specific gravity. ${next}` }
}

function inOwnUnit(name: string, own: string, figure: string, unit: string): TypedInput {
  const number = Number(figure.replace(',', '.'))
  if (unit === own && !Number.isNaN(number)) return { value: number }
  const [one, other] = [readUnit(unit), readUnit(own)]
  if (!Number.isNaN(number) && one.ok && other.ok && sameDimension(one.value, other.value))
    return { value: convert(number, unit, own) }
  const next = own === '' || own === '1' ? 'Give a bare number.' : `Give a number in ${own}.`
  return { wrong: `${name}: "${figure} ${unit}" cannot be read here. ${next}` }
}

function whichComma(name: string, typed: string): Asked {
  const [decimal, whole] = [typed.replace(',', '.'), typed.replaceAll(',', '')]
  const question = `${name}: is "${typed}" with a decimal comma, or with a comma between thousands?`
  const options = [
    { answer: decimal, means: `the comma is the decimal mark: ${decimal}` },
    { answer: whole, means: `the comma parts thousands: ${whole}` },
  ]
  return { ok: false, ask: { code: 'which-comma', where: name, got: typed, question, options } }
}
