import type { Check } from '../check.ts'
import type { Engine } from './engines.ts'
import { Writer } from './run-writer.ts'

const programs = 6
const day = 86_400_000

/** Several programs open an empty place at the same instant; each must open it and store its entry. */
export async function firstStartsAtOnce(engine: Engine, rounds: number): Promise<Check> {
  const faults: string[] = []
  for (let round = 0; round < rounds && faults.length === 0; round++) {
    const place = await engine.place()
    // Long enough for each of them to have loaded.
    const openAt = Date.now() + 700
    const writers = Array.from(
      { length: programs },
      (_, number) => new Writer({ ...place, first: number + 1, count: 1, openAt }),
    )
    await Promise.all(writers.map(({ ended }) => ended))
    faults.push(...writers.flatMap(({ refused }) => refused.map(({ got }) => `round ${round}: ${got}`)))
    const after = new Writer({ ...place, first: 0, count: 0 })
    await after.ended
    const found = after.held[0]?.entries.length ?? 0
    if (found !== programs) faults.push(`round ${round}: ${found} of ${programs} entries are there`)
  }
  return {
    name: `${programs} programs at once on an empty place, ${engine.name}`,
    outcome: faults.length === 0 ? 'passed' : 'failed',
    says: faults.length === 0 ? `${rounds} times, every entry of every one is there` : faults.join('; '),
  }
}

/** Two programs write to one place, one with a clock that is a day behind. */
export async function twoWriters(engine: Engine, count: number): Promise<Check> {
  const place = await engine.place()
  const openAt = Date.now() + 700
  const writers = [
    new Writer({ ...place, first: 10_000, count, openAt }),
    new Writer({ ...place, first: 20_000, count, openAt, clockBehind: day }),
  ]
  await Promise.all(writers.map(({ ended }) => ended))
  const after = new Writer({ ...place, first: 0, count: 0 })
  await after.ended
  const entries = after.held[0]?.entries ?? []
  const numbers = new Set(entries.map(([number]) => number))
  const lost = writers.flatMap(({ stored }) => stored).filter((number) => !numbers.has(number))
  const isInOrder = entries.every(([, knownAt], place) => place === 0 || entries[place - 1][1] <= knownAt)
  const isWhole = numbers.size === 2 * count && entries.length === 2 * count && lost.length === 0
  const refused = writers.flatMap(({ refused }) => refused.map(({ got }) => got))
  const found = `${entries.length} of ${2 * count} entries, ${lost.length} lost, ${refused.length} refused ${refused.join('; ')}`
  return {
    name: `two programs writing at once, one a day behind, ${engine.name}`,
    outcome: isWhole && isInOrder ? 'passed' : 'failed',
    says: `${found.trim()}; times of receipt ${isInOrder ? 'never run' : 'run'} backwards`,
  }
}
