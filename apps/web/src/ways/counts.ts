import { grouped } from '@holdfast/quantities'

/** Between thousands. */
export const thousands = '\u202f'

/** A count of things as it is written. */
export const countText = (count: number): string => grouped(String(count), thousands)

/** @example counted(1, 'entry', 'entries') // 'one entry' */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 1 ? `one ${one}` : `${countText(count)} ${many}`
