import { type QuantityName, readQuantity } from '@holdfast/quantities'

import type { ReadQuantity } from '../../entries/reading.ts'
import { memo } from '../memo.ts'
import { otherQuantities, quantityOfWord, type Role, roleOfWord, waterChangePhrase } from '../words/names.ts'
import { plain } from '../words/plain.ts'
import { isSummary } from '../words/summary.ts'

/** What the words above a column say of it. */
export interface Header {
  readonly text: string
  readonly role?: Role
  readonly quantity?: ReadQuantity
  /** As written, without the form. */
  readonly unit?: string
  /** As the quantity names it: NO3, NO3-N, PO4-P. */
  readonly form?: string
  /** The two temperatures of a specific gravity, as written. */
  readonly reference?: string
  /** Reckoned or wished figures, not readings. */
  readonly isSummary: boolean
  /** A quantity that has a name and no place in the log. */
  readonly isOther: boolean
  /** Words that are neither name nor unit nor form: the tank, the kit, the time of day. */
  readonly others: string
}

/** Of two roles in one header the earlier here holds: "time of day" is a time, "test date" a date. */
const order: readonly Role[] = [
  'date',
  'time',
  'note',
  'water change',
  'tank',
  'kit',
  'unit',
  'value',
  'parameter',
  'month',
  'day',
  'year',
]

/** Units that belong to one quantity alone. */
const quantityOfUnit: Readonly<Record<string, ReadQuantity>> = {
  '°c': 'temperature',
  '°f': 'temperature',
  celsius: 'temperature',
  fahrenheit: 'temperature',
  ppt: 'salinity',
  '‰': 'salinity',
  'ms/cm': 'salinity',
  'µs/cm': 'salinity',
  'us/cm': 'salinity',
  'meq/l': 'alkalinity',
  'mval/l': 'alkalinity',
  '°kh': 'alkalinity',
  '°dkh': 'alkalinity',
  '°dh': 'alkalinity',
}

const longest = 100

/** Understands a header such as "Nitrat NO3 (mg/l)"; pieces of several rows come joined by a space. */
export const readHeader = memo(understand, 5000)

/** Whether a header says what its column is. */
export const isKnown = ({ role, quantity, isSummary }: Header): boolean =>
  role !== undefined || quantity !== undefined || isSummary

function understand(text: string): Header {
  const nothing = { text, isSummary: false, isOther: false, others: '' }
  if (text.length > longest) return nothing
  const spelled = text.replace(/\b(mg|[uµμ]g|meq|mmol|[uµμ]mol|g)[ _](l|kg)\b/gi, '$1/$2')
  const tokens = spelled.split(/[\s()[\]{},;:=|_]+/).filter((token) => token !== '')
  const words = tokens.map(plain)
  if (isSummary(text)) return { ...nothing, isSummary: true }
  if (waterChangePhrase.test(plain(text)) && !words.some((word) => roleOfWord.get(word) === 'date'))
    return { ...nothing, role: 'water change', ...volumeIn(tokens) }
  const roles = words.map((word) => roleOfWord.get(word.replace(/[.?!]$/, '')))
  if (roles.includes('date')) return { ...nothing, role: 'date' }
  const names = words.map(nameIn)
  const at = names.findIndex((name) => name !== undefined)
  const name = names[at]
  if (name !== undefined) {
    const others = tokens.filter((_, place) => names[place] === undefined)
    const forms = names.flatMap((one) => one?.form ?? [])
    return { ...nothing, ...measured(name.quantity, tokens, forms, others) }
  }
  const role = order.find((one) => roles.includes(one))
  if (role !== undefined) return { ...nothing, role }
  const byUnit = words.map((word) => quantityOfUnit[word]).find((one) => one !== undefined)
  if (byUnit !== undefined) return { ...nothing, ...measured(byUnit, tokens, [], tokens) }
  return { ...nothing, isOther: words.some((word) => otherQuantities.has(word)), others: text }
}

interface Name {
  readonly quantity: ReadQuantity | 'specific gravity'
  readonly form?: 'N' | 'P'
}

/** A name by itself, with its charge ("NO3-", "PO4---"), or with the atom that is meant ("Nitrat-N"). */
function nameIn(word: string): Name | undefined {
  const bare = word.replace(/[.?!]$/, '').replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]*[⁺⁻]+$/, '')
  const spellings = [bare, bare.replace(/[-+]+$/, ''), bare.replace(/\^?\d[-+]$/, '')]
  const quantity = spellings.map((one) => quantityOfWord.get(one)).find((one) => one !== undefined)
  if (quantity !== undefined) return { quantity }
  const [, name = '', atom = ''] =
    /^(.+?)-?(n|p|nitrogen|stickstoff|azote|nitrogeno|azoto|stikstof|phosphorus|phosphor|phosphore|fosforo|fosfor)$/.exec(
      bare,
    ) ?? []
  const ofAtom = quantityOfWord.get(name)
  const isNitrogen = /^(?:n|nitrogen|stickstoff|azote|nitrogeno|azoto|stikstof)$/.test(atom)
  if (ofAtom === 'phosphate' && !isNitrogen) return { quantity: ofAtom, form: 'P' }
  if (['nitrate', 'nitrite', 'ammonia'].includes(ofAtom ?? '') && isNitrogen)
    return { quantity: ofAtom as ReadQuantity, form: 'N' }
  return undefined
}

function measured(
  named: ReadQuantity | 'specific gravity',
  tokens: readonly string[],
  atoms: readonly string[],
  others: readonly string[],
): Partial<Header> {
  const quantity = named === 'specific gravity' ? 'salinity' : named
  if (quantity === 'pH') return { quantity, others: others.join(' ') }
  const forms = [...tokens, ...atoms].filter((token) => formOf(quantity, token) !== undefined)
  const found = unitAmong(quantity, tokens)
  const rest = others.filter((token) => !forms.includes(token) && !found?.taken.includes(token))
  const words = rest.filter((token) => !/^(?:as|als|en|como|come|in|of|the|der|des)$/i.test(token)).join(' ')
  if (named === 'specific gravity') {
    const reference = tokens.find((token) => /\d.*\/.*\d/.test(token))
    const left = words.split(' ').filter((token) => token !== reference)
    return { quantity, unit: 'SG', ...(reference && { reference }), others: left.join(' ') }
  }
  // 'NO3-N' names ion and atom: the atom is meant
  const said = forms.map((token) => formOf(quantity, token)).filter((form) => form !== undefined)
  const form = said.find((one) => /(?:^|-)[NP]$/.test(one)) ?? said[0]
  const unit = found?.taken.filter((token) => quantity === 'alkalinity' || !forms.includes(token)).join(' ')
  return { quantity, ...(unit && { unit }), ...(form !== undefined && { form }), others: words }
}

/** The form that a word says of a quantity, as quantities knows it. */
export function formOf(quantity: ReadQuantity, word: string): string | undefined {
  if (!isDissolved(quantity)) return undefined
  const answer = readQuantity(quantity, `1 mg/L ${word.replace(/[()]/g, '')}`)
  // 'mg/L' itself is no form, and an element needs none
  return answer.ok && !isUnitText(word) ? answer.value.form : undefined
}

const isDissolved = (quantity: ReadQuantity): quantity is ReadQuantity & QuantityName =>
  ['nitrate', 'nitrite', 'ammonia', 'phosphate', 'calcium', 'magnesium'].includes(quantity)

/** The longest run of words that quantities takes for a unit of the quantity. */
function unitAmong(
  quantity: ReadQuantity,
  tokens: readonly string[],
): { readonly taken: readonly string[] } | undefined {
  const words = tokens.slice(0, 10)
  // "KH" is a name and a unit: in "KH (°d)" the unit is the other word
  const unnamed = words.filter((word) => nameIn(plain(word)) === undefined)
  if (unnamed.length > 0 && unnamed.length < words.length) {
    const found = unitAmong(quantity, unnamed)
    if (found !== undefined && quantity !== 'salinity') return found
  }
  for (let length = words.length; length > 0; length--) {
    // of two words that both are units the last is meant: "KH (dKH)"
    for (let start = words.length - length; start >= 0; start--) {
      const taken = words.slice(start, start + length)
      const asEnglish = taken.map((word) => (/^(?:bei|à|a|bij|@)$/i.test(word) ? 'at' : word))
      if (isUnitOf(quantity, asEnglish.join(' '))) return { taken: asEnglish }
    }
  }
  return undefined
}

/** Whether quantities knows the text as a unit of the quantity, be it that something more must be asked. */
export function isUnitOf(quantity: ReadQuantity, text: string): boolean {
  if (quantity === 'pH') return false
  const answer = readQuantity(quantity, `1 ${text}`, { density: 1 })
  return answer.ok || (answer.ask !== undefined && !/comma|trace/.test(answer.ask.code))
}

const anyQuantity = ['nitrate', 'alkalinity', 'salinity', 'temperature'] as const

/** Whether a text is a unit of anything that is measured here. */
export const isUnitText = (text: string): boolean => anyQuantity.some((quantity) => isUnitOf(quantity, text))

function volumeIn(tokens: readonly string[]): Partial<Header> {
  const unit = tokens.find((token) => {
    const answer = readQuantity('volume', `1 ${token}`)
    return answer.ok || answer.ask?.code === 'which-gallon' || token === '%'
  })
  return { ...(unit !== undefined && { unit }), others: tokens.filter((token) => token !== unit).join(' ') }
}
