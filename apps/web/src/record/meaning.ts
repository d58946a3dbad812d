import { type BodyOf, type Entry, readQuantities } from '@holdfast/logbook'
import { plain } from '../figure/numbers.ts'

/** A kind and a body, as an entry or a draft has them. */
type Said = Pick<Entry, 'kind' | 'body'>

/**
 * What a reading comes to in the unit in which the project keeps it, where it was given in another;
 * nothing for other entries.
 *
 * @example meaning({ kind: 'reading', body }) // '4.43 mg/L NO3' of 1 mg/L NO3-N
 */
export function meaning({ kind, body }: Said): string | undefined {
  if (kind !== 'reading') return undefined
  const {
    quantity,
    value,
    unit = '',
    form = '',
    belowDetection,
    aboveRange,
    interval,
  } = body as BodyOf<'reading'>
  const canonical = readQuantities[quantity]
  const given = [unit, form].filter((part) => part !== '').join(' ')
  if (value === null || given === '' || given === canonical || quantity === 'pH') return undefined
  if (interval !== undefined) return `${interval.map(plain).join(' to ')} ${canonical}`
  return `${belowDetection ? 'under ' : aboveRange ? 'over ' : ''}${plain(value)} ${canonical}`
}

/** The same for a list, where only ions and atoms of one name may be taken for each other. */
export const meaningInList = (said: Said): string | undefined =>
  said.kind === 'reading' && ambiguous.has((said.body as BodyOf<'reading'>).quantity)
    ? meaning(said)
    : undefined

const ambiguous: ReadonlySet<string> = new Set(['nitrate', 'phosphate', 'ammonia', 'nitrite'])
