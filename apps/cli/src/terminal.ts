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
  /** A question in words, answered with a line; absent where nobody is there to answer. */
  readonly asks?: (question: string) => Promise<string>
}

/** The terminal of this process. */
export function processTerminal(): Terminal {
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(text),
    redraws: process.stderr.isTTY === true,
    async agrees(question) {
      return isAnswered() ? /^y(es)?$/i.test((await lineFor(`${question} [y/N] `)).trim()) : undefined
    },
    ...(isAnswered() && { asks: lineFor }),
  }
}

/** Whether somebody reads the questions and types. */
const isAnswered = (): boolean => process.stdin.isTTY === true && process.stderr.isTTY === true

async function lineFor(question: string): Promise<string> {
  const lines = createInterface({ input: process.stdin, output: process.stderr })
  try {
    return await lines.question(question)
  } finally {
    lines.close()
  }
}
