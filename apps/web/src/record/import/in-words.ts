import { isQuantityName, quantities } from '@holdfast/quantities'
import { counted, countText } from '../../ways/counts.ts'
import type { Asked, Preview } from './protocol.ts'

/** @example quantityInWords('nitrate') // 'Nitrate' */
export const quantityInWords = (name: string): string =>
  isQuantityName(name) ? quantities[name].title : name

const kinds: readonly (readonly [kind: string, one: string, many: string])[] = [
  ['reading', 'reading', 'readings'],
  ['note', 'note', 'notes'],
  ['water-change', 'water change', 'water changes'],
  ['media', 'change of media', 'changes of media'],
]

/** New entries by kind. @example '76 readings, 3 notes and one water change'; empty where there is none */
export function freshInWords(fresh: Preview['fresh']): string {
  return listInWords(
    kinds.flatMap(([kind, one, many]) => {
      const count = fresh[kind] ?? 0
      return count === 0 ? [] : [counted(count, one, many)]
    }),
  )
}

/** @example listInWords(['a', 'b', 'c']) // 'a, b and c' */
export const listInWords = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

/**
 * The first of some cells with what stands in them, and how many more there are.
 *
 * @example 'A3 “1/2/25”, A4 “2/3/25” and 9 more'
 */
export function cellsInWords({ cells: { first, all }, written }: Pick<Asked, 'cells' | 'written'>): string {
  const shown = first.map((cell, at) => `${cell} “${shortened(written[at] ?? '')}”`)
  const more = all - first.length
  return more > 0 ? `${shown.join(', ')} and ${countText(more)} more` : listInWords(shown)
}

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)} …` : text)

export const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1)

/** Questions on which cells wait; the others may be answered and need not be. */
export const mustAnswer = ({ questions }: Pick<Preview, 'questions'>) =>
  questions.filter(({ waiting }) => waiting > 0)
