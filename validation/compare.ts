/** Whether an answer is what was expected. */
import type { Answered } from './answers/answer.ts'
import type { Expected, Plain } from './case-file.ts'

type Given = Exclude<Answered, { readonly skipped: unknown }>

/** All the conditions of an expectation hold. */
export function meets(given: Given, expected: Expected): boolean {
  const list: readonly Plain[] = Array.isArray(given.value) ? given.value : [given.value as Plain]
  const names = [...list, ...(given.alsoCalled ?? [])]
  const holds = (value: Plain) => names.some((one) => same(one, value))
  const conditions = [
    expected.equals === undefined || equals(given, expected.equals),
    // Of a list without order any one will do.
    expected.one_of === undefined ||
      expected.one_of.some((one) => equals(given, one) || (given.anyOrder === true && holds(one))),
    expected.range === undefined || within(given.value, expected.range),
    expected.includes === undefined || expected.includes.every(holds),
    expected.excludes === undefined || !expected.excludes.some(holds),
  ]
  return conditions.every((condition) => condition)
}

function equals(given: Given, expected: NonNullable<Expected['equals']>): boolean {
  if (typeof expected === 'boolean' && given.holds !== undefined) return given.holds === expected
  if (Array.isArray(expected)) return Array.isArray(given.value) && sameList(given, expected)
  // A thing described by several of its keys is named by each of them.
  if (typeof expected === 'object') {
    const names = [given.value as Plain, ...(given.alsoCalled ?? [])]
    return Object.values(expected).every((value) => names.some((name) => same(name, value as Plain)))
  }
  if (Array.isArray(given.value))
    return given.value.length === 1 && same(given.value[0] as Plain, expected as Plain)
  return [given.value as Plain, ...(given.alsoCalled ?? [])].some((name) => same(name, expected as Plain))
}

function sameList(given: Given, expected: readonly Plain[]): boolean {
  const order = (list: readonly Plain[]) => (given.anyOrder ? [...list].map(String).sort() : [...list])
  const got = order(given.value as readonly Plain[])
  const wanted = order(expected)
  return got.length === wanted.length && got.every((value, at) => same(value, wanted[at] as Plain))
}

/** Numbers to the last digit that is printed in the expectation, and to rounding where it is whole. */
function same(got: Plain, expected: Plain): boolean {
  if (typeof got !== 'number' || typeof expected !== 'number') return got === expected
  const [, decimals = ''] = String(expected).split('.')
  const half = decimals === '' ? 0 : 0.5 * 10 ** -decimals.length
  return Math.abs(got - expected) <= half * (1 + 1e-9) + 1e-9 * Math.abs(expected)
}

function within(value: Given['value'], [low, high]: readonly [number, number]): boolean {
  if (typeof value !== 'number' || !Number.isFinite(value)) return false
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high))
  return value >= low - slack && value <= high + slack
}
