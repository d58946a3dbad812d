import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** What a running server leaves in the data folder for the next start. */
interface Mark {
  readonly start: string
  readonly pid: number
  readonly port: number
}

const fileIn = (folder: string): string => join(folder, 'running.json')

/**
 * The port of the server that runs on a data folder, if one does. The file may be left over from one
 * that was cut off, and its port taken by another program since, so it is asked for its own mark.
 */
export async function runningOn(folder: string): Promise<number | undefined> {
  const mark = read(folder)
  if (mark === undefined) return undefined
  try {
    const answer = await fetch(`http://127.0.0.1:${mark.port}/api/health`, {
      signal: AbortSignal.timeout(2000),
    })
    const health: unknown = await answer.json()
    return field(health, 'start') === mark.start ? mark.port : undefined
  } catch {
    return undefined
  }
}

/**
 * Leaves the mark, unless another start was quicker.
 *
 * @returns the port of the other one, or undefined when the mark is ours
 */
export async function markRunning(folder: string, mark: Mark): Promise<number | undefined> {
  for (;;) {
    try {
      writeFileSync(fileIn(folder), `${JSON.stringify(mark)}\n`, { flag: 'wx' })
      return undefined
    } catch (error) {
      if (field(error, 'code') !== 'EEXIST') throw error
      const other = await runningOn(folder)
      if (other !== undefined) return other
      rmSync(fileIn(folder), { force: true })
    }
  }
}

/** Takes the mark away, if it is that of this start. */
export function unmark(folder: string, start: string): void {
  if (read(folder)?.start === start) rmSync(fileIn(folder), { force: true })
}

function read(folder: string): Mark | undefined {
  try {
    const mark: unknown = JSON.parse(readFileSync(fileIn(folder), 'utf8'))
    const [start, pid, port] = [field(mark, 'start'), field(mark, 'pid'), field(mark, 'port')]
    return typeof start === 'string' && typeof pid === 'number' && typeof port === 'number'
      ? { start, pid, port }
      : undefined
  } catch {
    return undefined
  }
}

const field = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined
