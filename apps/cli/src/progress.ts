import type { Running } from '@holdfast/inference'
import type { Terminal } from './terminal.ts'

/** Work shorter than this says nothing of itself, ms. */
const quiet = 1000
/** Between two lines where a line cannot be drawn over, ms. */
const pause = 10_000

/** Progress of a run on the standard error. */
export interface Progress extends Running {
  /** Clears the line, if one was drawn. */
  readonly done: () => void
}

/**
 * Tells how far a run is once it has taken a second. The run holds the thread, so Ctrl-C ends the
 * program there and then; nothing is open and nothing half written while a run works.
 */
export function progress({ err, redraws }: Terminal, what: string, now: () => number = Date.now): Progress {
  const began = now()
  let last: number | undefined
  return {
    cancelled: () => false,
    onProgress(share) {
      const time = now()
      if (time - began < quiet || (last !== undefined && time - last < (redraws ? 100 : pause))) return
      last = time
      const line = `${what}: ${Math.round(100 * share)} %`
      err(redraws ? `\r${line}` : `${line}\n`)
    },
    done() {
      if (redraws && last !== undefined) err(`\r${' '.repeat(what.length + 7)}\r`)
    },
  }
}
