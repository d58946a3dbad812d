/**
 * The program that the checks of the record kill, starve and set side by side: it opens a log, says what
 * it holds, stores numbered readings and says each one as it is acknowledged, a line each.
 */
import { closeSync, openSync, rmSync, writeSync } from 'node:fs'
import { type Logbook, Refused } from '@holdfast/logbook'
import { nitrate } from '@holdfast/logbook/conformance/nitrate.ts'
import { openStore } from '@holdfast/logbook/open'
import type { Held, Task } from './task.ts'

const task: Task = JSON.parse(process.argv[2] ?? '{}')

/** At once: a line that was said must not wait in this process when it is killed. */
const say = (word: string, what: unknown = null): void => {
  writeSync(1, `${word} ${JSON.stringify(what)}\n`)
}

async function held(log: Logbook): Promise<Held> {
  const entries = (await log.read()).map(({ id, knownAt }) => [Number(id.slice(-6)), knownAt] as const)
  const attachments: string[] = []
  for (const { sha256 } of await log.attachments()) {
    if (await log.attachment(sha256)) attachments.push(sha256)
  }
  return { entries, attachments }
}

/** Stores entry `number`, and with every tenth a file. @returns whether it was taken */
async function store(log: Logbook, number: number): Promise<boolean> {
  try {
    await log.append([nitrate(number)])
    say('stored', number)
    if (number % 10 === 0) {
      const { sha256 } = await log.attach(Buffer.alloc(100_000, `picture ${number}`), 'image/jpeg')
      say('attached', sha256)
    }
    return true
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    say('refused', error.issues)
    return false
  }
}

function fillDisk(file: string): void {
  const handle = openSync(file, 'w')
  try {
    for (let size = 1 << 20; size >= 1; size = size > 1 ? size >> 1 : 0) {
      try {
        while (writeSync(handle, Buffer.alloc(size)) === size);
      } catch {
        // No room for so much; less may fit.
      }
    }
  } finally {
    closeSync(handle)
  }
}

while (Date.now() < (task.openAt ?? 0));
say('opening')
const clock = (): Date => new Date(Date.now() - (task.clockBehind ?? 0))
const opened = await openStore({ ...task, clock })
if (!opened.ok) {
  say('refused', opened.issues)
} else {
  const log = opened.logbook
  say('holds', await held(log))
  for (let number = task.first; number < task.first + task.count; number++) {
    if (task.fillDisk !== undefined && number === task.first + task.count / 2) fillDisk(task.fillDisk)
    if (await store(log, number)) continue
    if (task.fillDisk === undefined) break
    rmSync(task.fillDisk, { force: true })
    await store(log, number)
  }
  if (task.fillDisk !== undefined) say('holds', await held(log))
  await log.close()
  say('closed')
}
