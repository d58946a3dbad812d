import { createInterface } from 'node:readline/promises'

/** Where a command speaks and asks. */
export interface Terminal {
  /** Results, on the standard output. */
  readonly out: (text: string) => void
  /** Errors and progress, on the standard error. */
  readonly err: (text: string) => void
  /** Whether progress can be drawn over itself. */
  readonly redraws: boolean
  /** A question of yes or no; undefined where nobody is there to answer. */
  readonly agrees: (question: string) => Promise<boolean | undefined>
}

/** The terminal of this process. */
export function processTerminal(): Terminal {
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(text),
    redraws: process.stderr.isTTY === true,
    async agrees(question) {
      if (!process.stdin.isTTY || !process.stderr.isTTY) return undefined
      const lines = createInterface({ input: process.stdin, output: process.stderr })
      try {
        return /^y(es)?$/i.test((await lines.question(`${question} [y/N] `)).trim())
      } finally {
        lines.close()
      }
    },
  }
}
