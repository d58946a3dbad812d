/** Thousands apart from five digits on, as the figures of the page have them: 1842, but 12 345. */
export const grouped = (digits: string): string =>
  digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, '\u202f') : digits

/** A count of things as it is written. */
export const countText = (count: number): string => grouped(String(count))

/** @example counted(1, 'entry', 'entries') // 'one entry' */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 1 ? `one ${one}` : `${countText(count)} ${many}`
