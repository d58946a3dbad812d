import { isDate } from '@holdfast/logbook'
import { parseDuration, parseVolume, words } from '@holdfast/quantities'
import { InvalidArgumentError } from 'commander'

/** A whole number within bounds, for commander. */
export function wholeNumber(least: number, most: number): (text: string) => number {
  return (text) => {
    const number = Number(text)
    if (!/^\d+$/.test(text) || number < least || number > most)
      throw new InvalidArgumentError(`Give a whole number from ${least} to ${most}.`)
    return number
  }
}

/** A number above 0, for commander. */
export function numberAboveZero(text: string): number {
  const number = Number(text.replace(',', '.'))
  if (text.trim() === '' || !Number.isFinite(number) || number <= 0)
    throw new InvalidArgumentError('Give a number above 0, such as 0.5.')
  return number
}

/** An ISO date, for commander. */
export function date(text: string): string {
  if (!isDate(text)) throw new InvalidArgumentError('Give a date such as 2026-03-01.')
  return text
}

/** Gathers `--answer question=option`; the last "=" parts them, since a question may hold one. */
export function answer(text: string, before: Readonly<Record<string, string>>): Record<string, string> {
  const at = text.lastIndexOf('=')
  if (at <= 0) throw new InvalidArgumentError('Give question=option, such as nitrate-form:B=NO3.')
  return { ...before, [text.slice(0, at)]: text.slice(at + 1) }
}

/** Gathers `--set blank=text`; the first "=" parts them, since a text may hold one. */
export function namedText(text: string, before: Readonly<Record<string, string>>): Record<string, string> {
  const at = text.indexOf('=')
  if (at <= 0) throw new InvalidArgumentError('Give blank=text, such as value="6 mg/L NO3".')
  return { ...before, [text.slice(0, at)]: text.slice(at + 1) }
}

/** A routine of water changes. */
export interface WaterChange {
  readonly volume_L: number
  readonly every_days: number
}

/** "60 L / 14 d", for commander. */
export function waterChange(text: string): WaterChange {
  const parts = text.split('/')
  const [volumeText, intervalText] = parts
  if (volumeText === undefined || intervalText === undefined || parts.length !== 2)
    throw new InvalidArgumentError('Give a volume and a span of time, such as "60 L / 14 d".')
  const volume = parseVolume(volumeText.trim())
  const interval = parseDuration(intervalText.trim())
  const issues = [volume, interval].flatMap((answer) => {
    if (answer.ok) return []
    return answer.issues ? answer.issues.map(words) : [answer.ask.question]
  })
  if (interval.ok && interval.value <= 0) issues.push('Duration: is not above 0. Give one such as 14 d.')
  if (!volume.ok || !interval.ok || issues.length > 0) throw new InvalidArgumentError(issues.join(' '))
  return { volume_L: volume.value, every_days: interval.value }
}

/** Gathers an option that may be given more than once. */
export const gathered = (text: string, before: readonly string[]): readonly string[] => [...before, text]
