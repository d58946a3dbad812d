import { mkdir, readFile, rm, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import { Refused, type Stored } from '@holdfast/logbook'
import { openStore } from '@holdfast/logbook/open'
import type { Check } from '../check.ts'
import type { Engine } from './engines.ts'
import { Writer } from './run-writer.ts'

/** What a log says when it is opened: its entries, or the code of the refusal. */
async function readingOf(folder: string): Promise<readonly Stored[] | string> {
  const opened = await openStore({ folder })
  if (!opened.ok) return opened.issues[0]?.code ?? 'no reason'
  try {
    return await opened.logbook.read()
  } catch (error) {
    if (error instanceof Refused) return error.issues[0]?.code ?? 'no reason'
    throw error
  } finally {
    await opened.logbook.close()
  }
}

/**
 * Damages a log in one byte, or cuts it off, at random places. Either the start refuses it, or the
 * damage lies where nothing stands and the log says what it said.
 */
export async function damage(engine: Engine, trials: number): Promise<readonly Check[]> {
  const { folder } = await engine.place()
  const writer = new Writer({ folder, first: 1, count: 300 })
  await writer.ended
  const whole = await readingOf(folder)
  const bytes = await readFile(join(folder, 'holdfast.db'))
  const copy = join(folder, 'copy')
  const reading = async (damaged: Buffer): Promise<readonly Stored[] | string> => {
    await rm(copy, { recursive: true, force: true })
    await mkdir(join(copy, 'attachments'), { recursive: true })
    await writeFile(join(copy, 'holdfast.db'), damaged)
    return readingOf(copy)
  }
  const flips = new Map<string, number>()
  const cuts = new Map<string, number>()
  for (let trial = 0; trial < trials; trial++) {
    const flipped = Buffer.from(bytes)
    const place = Math.floor(Math.random() * bytes.length)
    flipped[place] ^= 1 << Math.floor(Math.random() * 8)
    count(flips, await reading(flipped), whole)
    count(cuts, await reading(bytes.subarray(0, place)), whole)
  }
  return [
    check('a flipped bit in the file', flips, [unnoticed]),
    check('a file cut off', cuts, [unnoticed, same]),
    await pictures(folder),
  ]
}

const same = 'says the same'
const unnoticed = 'says something else'

function count(
  counts: Map<string, number>,
  found: readonly Stored[] | string,
  whole: readonly Stored[] | string,
): void {
  const outcome = typeof found === 'string' ? found : isDeepStrictEqual(found, whole) ? same : unnoticed
  counts.set(outcome, (counts.get(outcome) ?? 0) + 1)
}

function check(name: string, counts: ReadonlyMap<string, number>, mustNotBe: readonly string[]): Check {
  return {
    name,
    outcome: mustNotBe.some((outcome) => counts.has(outcome)) ? 'failed' : 'passed',
    says: [...counts].map(([outcome, times]) => `${times} ${outcome}`).join(', '),
  }
}

/** Damages each attachment in one way or the other; each must be refused when it is asked for. */
async function pictures(folder: string): Promise<Check> {
  const opened = await openStore({ folder })
  if (!opened.ok) throw new Refused(opened.issues)
  const names = (await opened.logbook.attachments()).map(({ sha256 }) => sha256)
  let refused = 0
  for (const [place, name] of names.entries()) {
    const file = join(folder, 'attachments', name)
    const bytes = await readFile(file)
    bytes[Math.floor(Math.random() * bytes.length)] ^= 1
    if (place % 2 === 0) await writeFile(file, bytes)
    else await truncate(file, bytes.length - 1)
    await opened.logbook.attachment(name).catch((error: unknown) => {
      if (error instanceof Refused && error.issues[0]?.code === 'damaged-attachment') refused++
    })
  }
  await opened.logbook.close()
  return {
    name: 'a damaged attachment',
    outcome: refused === names.length && refused > 0 ? 'passed' : 'failed',
    says: `${refused} of ${names.length} refused`,
  }
}
