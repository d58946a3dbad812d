export interface Accepted {
  readonly unit: string
  readonly unitWords: readonly string[]
  readonly min: number
  readonly max: number
}

/** A typed number with or without its unit; a comma may be the decimal sign. Nothing is guessed or cut to fit. */
export function readNumber(
  title: string,
  text: string,
  accepted: Accepted,
): { readonly value: number } | { readonly issue: string } {
  const { unit, unitWords, min, max } = accepted
  const next = `Give a number from ${min} to ${max} ${unit}, such as ${Math.round((min + max) / 4) || min + 1} ${unit}.`
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*(\p{L}*)\s*$/u.exec(text)
  if (!match) return { issue: `${title}: "${text}" is not a number. ${next}` }
  const [, digits = '', word = ''] = match
  if (word !== '' && ![unit, ...unitWords].some((known) => known.toLowerCase() === word.toLowerCase())) {
    return { issue: `${title}: "${text}" has a unit that does not belong here. ${next}` }
  }
  const value = Number(digits.replace(',', '.'))
  if (value < min || value > max)
    return { issue: `${title}: ${text.trim()} is out of reach of this lever. ${next}` }
  return { value }
}
