import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import type { Issue } from '@holdfast/logbook'
import type { Held, Task } from './task.ts'

/** The writer is a program of its own, built beside this one. */
const program = join(dirname(process.argv[1] ?? ''), 'record-writer.mjs')

/** A writer at work, and what it has said so far. */
export class Writer {
  readonly child: ChildProcess
  readonly stored: number[] = []
  readonly attached: string[] = []
  readonly refused: Issue[] = []
  readonly held: Held[] = []
  /** Fulfilled when the writer has ended and all it said was read. */
  readonly ended: Promise<void>
  readonly #words = new Set<string>()
  readonly #waiting = new Map<string, () => void>()

  /** @param before  a command that starts the writer, such as one that traces it */
  constructor(task: Task, before: readonly string[] = [], as: { uid?: number; gid?: number } = {}) {
    const [command = process.execPath, ...rest] = [...before, process.execPath, program, JSON.stringify(task)]
    this.child = spawn(command, rest, { stdio: ['ignore', 'pipe', 'inherit'], ...as })
    const { stdout } = this.child
    if (stdout === null) throw new Error('the writer has no way to speak')
    const lines = createInterface({ input: stdout })
    lines.on('line', (line) => this.#hear(line))
    this.ended = Promise.all([once(this.child, 'exit'), once(lines, 'close')]).then(() => {
      for (const resolve of this.#waiting.values()) resolve()
    })
  }

  /** Waits until the writer said a word, or ended. */
  async said(word: string): Promise<void> {
    if (this.#words.has(word)) return
    await Promise.race([this.ended, new Promise<void>((resolve) => this.#waiting.set(word, resolve))])
  }

  hasSaid(word: string): boolean {
    return this.#words.has(word)
  }

  #hear(line: string): void {
    const blank = line.indexOf(' ')
    const word = line.slice(0, blank)
    const what = JSON.parse(line.slice(blank))
    if (word === 'stored') this.stored.push(what)
    if (word === 'attached') this.attached.push(what)
    if (word === 'refused') this.refused.push(...what)
    if (word === 'holds') this.held.push(what)
    this.#words.add(word)
    this.#waiting.get(word)?.()
  }
}
