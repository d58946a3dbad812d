import { keep, kept } from '../shell/browser-store.ts'

/** How a keeper reads and types figures. */
export interface Ways {
  readonly units: 'metric' | 'US'
  readonly decimal: 'point' | 'comma'
  readonly dates: 'day first' | 'month first' | 'year first'
  /** Whether single letters are keys. */
  readonly keys: 'on' | 'off'
}

export const choices: { readonly [Name in keyof Ways]: readonly Ways[Name][] } = {
  units: ['metric', 'US'],
  decimal: ['point', 'comma'],
  dates: ['day first', 'month first', 'year first'],
  keys: ['on', 'off'],
}

const name = 'holdfast.ways'
let current: Ways | undefined

/** The ways of this browser: as the keeper chose, else as its language has them. */
export function ways(): Ways {
  current ??= { ...waysOfLanguage(languageHere()), ...chosen() }
  return current
}

/** Chooses, and remembers it. */
export function chooseWays(next: Partial<Ways>): void {
  current = { ...ways(), ...next }
  keep(name, current)
}

/** What a language tag tells; `en-US` reads gallons and puts the month first. */
export function waysOfLanguage(language: string): Ways {
  const parts = new Intl.NumberFormat(language).formatToParts(1.5)
  const comma = parts.some(({ type, value }) => type === 'decimal' && value === ',')
  const order = new Intl.DateTimeFormat(language)
    .formatToParts(0)
    .find(({ type }) => type !== 'literal')?.type
  return {
    units: /-US$/.test(language) ? 'US' : 'metric',
    decimal: comma ? 'comma' : 'point',
    dates: order === 'year' ? 'year first' : order === 'month' ? 'month first' : 'day first',
    keys: 'on',
  }
}

/** In a worker and in Node there is a language and no store. */
const hasStore = typeof localStorage !== 'undefined'

const languageHere = () => (hasStore && typeof navigator !== 'undefined' ? navigator.language : 'en-GB')

/** Written by this page, perhaps by an older one: a choice that is gone is not taken. */
function chosen(): Partial<Ways> {
  const found = hasStore ? kept(name) : undefined
  if (typeof found !== 'object' || found === null) return {}
  const pick = <Name extends keyof Ways>(key: Name) => {
    const value = choices[key].find((one) => one === Reflect.get(found, key))
    return value === undefined ? {} : { [key]: value }
  }
  return { ...pick('units'), ...pick('decimal'), ...pick('dates'), ...pick('keys') }
}
