import { type Asked, type Refused, words } from '@holdfast/quantities'
import type { Terminal } from './terminal.ts'

/**
 * Says why something typed is not understood: issues on the standard error, a question on the standard output.
 *
 * @returns the exit code: 1 for issues, 2 for a question
 */
export function notRead(
  answer: Refused | Asked,
  { json }: { readonly json?: true },
  terminal: Terminal,
): 1 | 2 {
  if (answer.issues !== undefined) {
    terminal.err(`${answer.issues.map(words).join('\n')}\n`)
    return 1
  }
  const { code, question, options } = answer.ask
  const choices = options.map(({ answer: typed, means }) => `  "${typed}": ${means}`)
  terminal.out(
    json
      ? JSON.stringify({ question: { code, question, options } }, null, 2)
      : [question, ...choices].join('\n'),
  )
  return 2
}
