import type { Question } from '@holdfast/quantities'
import { plain } from '../../figure/numbers.ts'
import { type BlankRead, readBlank } from './read-blank.ts'
import type { Given, Sum } from './sum.ts'

/** What stands in the blanks; a blank that is not named here stands at its start. */
export type Typed = Readonly<Record<string, string>>

/** What a sum comes to: a result, a question to one of its blanks, or all that is wrong. */
export type SumAnswer =
  | { readonly is: 'result'; readonly text: string }
  | { readonly is: 'question'; readonly input: string; readonly ask: Question }
  | { readonly is: 'wrong'; readonly inputs: readonly string[]; readonly issues: readonly string[] }

/** The sum over what is typed. It does not throw. */
export function answerTo(sum: Sum, typed: Typed): SumAnswer {
  let given: Given = {}
  const reads = sum.blanks.map((blank): readonly [string, BlankRead] => {
    const read = readBlank(blank, typed[blank.input] ?? String(blank.start), given)
    if ('value' in read) given = { ...given, [blank.input]: read.value }
    return [blank.input, read]
  })
  const wrong = reads.flatMap(([input, read]) => ('wrong' in read ? [{ input, issue: read.wrong }] : []))
  if (wrong.length > 0)
    return { is: 'wrong', inputs: wrong.map(({ input }) => input), issues: wrong.map(({ issue }) => issue) }
  for (const [input, read] of reads) if ('ask' in read) return { is: 'question', input, ask: read.ask }
  const answer = sum.reckon(given)
  if (answer.ok) return { is: 'result', text: `${plain(answer.value * sum.shown.factor)} ${sum.shown.unit}` }
  const issues = answer.issues.map(({ where, got, accepted, next }) => {
    const label = sum.blanks.find(({ input }) => input === where)?.label ?? capital(where)
    const figure = typeof got === 'number' ? plain(got) : String(got)
    return `${label}: ${figure} cannot be taken here, but ${accepted}. ${next}`
  })
  return { is: 'wrong', inputs: [], issues }
}

/** For which inputs the sum holds; empty where any will do. */
export function holdsFor({ blanks }: Sum): string {
  const ranges = blanks.flatMap(({ label, unit, holds }) =>
    holds === undefined ? [] : [`${small(label)} ${plain(holds[0])} to ${plain(holds[1])} ${unit}`.trim()],
  )
  return ranges.length > 0 ? `Holds for ${ranges.join(', ')}. ` : ''
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)
const small = (word: string): string => word.charAt(0).toLowerCase() + word.slice(1)
