import { type Answer, parseDuration, parseVolume, words } from '@holdfast/quantities'

export interface Lever {
  readonly title: string
  /** Unit in which the lever counts, and that a bare number is taken to be in. */
  readonly unit: 'L' | 'days'
  readonly min: number
  readonly max: number
}

/** What was typed into a lever, in its unit: '20', '5 US gal', '2 weeks'. Nothing is cut to fit. */
export function readNumber(
  lever: Lever,
  text: string,
): { readonly value: number } | { readonly issue: string } {
  const { title, unit, min, max } = lever
  // No change at all is a setting of the lever, though no volume.
  if (unit === 'L' && min === 0 && /^\s*0+(?:[.,]0*)?\s*L?\s*$/i.test(text)) return { value: 0 }
  const read: Answer<number> =
    unit === 'L'
      ? parseVolume(text, { where: title, unit: 'L' })
      : parseDuration(text, { where: title, unit: 'd' })
  if (!read.ok) return { issue: read.issues ? read.issues.map(words).join(' ') : read.ask.question }
  if (read.value < min || read.value > max)
    return { issue: `${title}: ${text.trim()} is out of reach of this lever. Give ${min} to ${max} ${unit}.` }
  return { value: read.value }
}
