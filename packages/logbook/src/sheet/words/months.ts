import { plain } from './plain.ts'

/** The first letters that tell months apart in English, German, French, Spanish, Italian and Dutch. */
const months: readonly (readonly string[])[] = [
  ['jan', 'ene', 'gen', 'jan'],
  ['feb', 'fev'],
  ['mar', 'maa', 'mrt', 'mrz', 'maerz'],
  ['apr', 'avr', 'abr'],
  ['may', 'mai', 'mag', 'mei'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'aou', 'ago'],
  ['sep', 'set'],
  ['oct', 'okt', 'ott'],
  ['nov'],
  ['dec', 'dez', 'dic'],
]

const full = new Set(
  (
    'january february march april may june july august september october november december ' +
    'januar februar marz maerz april mai juni juli august september oktober november dezember ' +
    'janvier fevrier mars avril mai juin juillet aout septembre octobre novembre decembre ' +
    'enero febrero marzo abril mayo junio julio agosto septiembre setiembre octubre noviembre diciembre ' +
    'gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre ' +
    'januari februari maart april mei juni juli augustus september oktober november december'
  ).split(' '),
)

/** 1 to 12, or undefined where the word is no name of a month and no usual short form of one. */
export function monthNamed(word: string): number | undefined {
  const bare = plain(word).replace(/\.$/, '')
  if (bare.length < 3) return undefined
  const month = months.findIndex((names) => names.some((name) => bare.startsWith(name))) + 1
  if (month === 0) return undefined
  return bare.length <= 4 || full.has(bare) ? month : undefined
}

export interface MonthAndYear {
  readonly month?: number
  readonly year?: number
}

/** The month and the year that a title or the name of a sheet says: "January 2026", "Jan 26", "2026-03". */
export function monthAndYear(text: string): MonthAndYear {
  const [, isoYear, isoMonth] = /\b((?:19|20)\d{2})[-_./](0?[1-9]|1[0-2])(?![\d-])/.exec(text) ?? []
  if (isoYear !== undefined) return { year: Number(isoYear), month: Number(isoMonth) }
  const [, monthFirst, yearAfter] = /(?<![\d.])(0?[1-9]|1[0-2])[-_./]((?:19|20)\d{2})\b/.exec(text) ?? []
  if (monthFirst !== undefined) return { year: Number(yearAfter), month: Number(monthFirst) }
  const words = plain(text).split(/[^\p{L}\d']+/u)
  const named = words.map(monthNamed)
  const at = named.findIndex((month) => month !== undefined)
  const month = named[at]
  const long = /(?<!\d)((?:19|20)\d{2})(?!\d)/.exec(text)?.[1]
  const short = at < 0 ? undefined : /^'?(\d{2})$/.exec(words[at + 1] ?? '')?.[1]
  const year = long === undefined ? (short === undefined ? undefined : 2000 + Number(short)) : Number(long)
  return { ...(month !== undefined && { month }), ...(year !== undefined && { year }) }
}
