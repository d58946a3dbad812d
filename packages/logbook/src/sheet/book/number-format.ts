/** Numbers of the built-in formats that show a date or a time (ECMA-376, 18.8.30; from memory). */
const builtIn = new Set([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 46, 47])

/** Whether a format shows a date or a time: it names a year, a month, a day, an hour or a second. */
export function showsDate(id: number, code: string | undefined): boolean {
  if (code === undefined) return builtIn.has(id) || (id >= 27 && id <= 36) || (id >= 50 && id <= 58)
  const bare = code.replace(/"[^"]*"|\\.|_.|\*.|\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
  return !/general/i.test(bare) && /[ymdhs]/i.test(bare)
}

/** Days between the first day of Unix and the day 0 of each system of serial dates. */
const day0 = { 1900: 25_569, 1904: 24_107 } as const

/** ISO date, and time where the number has a part of a day; undefined where no keeper lived then. */
export function dateOfSerial(
  serial: number,
  system: 1900 | 1904,
): { readonly date: string; readonly time?: string } | undefined {
  const minutes = Math.round((serial - day0[system]) * 1440)
  const moment = new Date(minutes * 60_000)
  const year = moment.getUTCFullYear()
  if (!(year >= 1950 && year <= 2150)) return undefined
  const text = moment.toISOString()
  const time = minutes % 1440 === 0 ? {} : { time: text.slice(11, 16) }
  return { date: text.slice(0, 10), ...time }
}
