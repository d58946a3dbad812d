import { setTimeout as pause } from 'node:timers/promises'
import type { Check } from '../check.ts'
import type { Engine } from './engines.ts'
import { Writer } from './run-writer.ts'
import type { Held } from './task.ts'

/** Each place is killed this often: once in its first start, then in its writes. */
const cutsOfPlace = 10

/**
 * Kills the program at random moments: in the first start on an empty place and in the middle of writes.
 * What was acknowledged must be there when the next one opens, once, and at most the one entry that was
 * under way besides.
 */
export async function powerCuts(engine: Engine, cuts: number): Promise<Check> {
  const total = { acknowledged: 0, besides: 0, firstStarts: 0 }
  const faults: string[] = []
  for (let cut = 0; cut < cuts && faults.length === 0; cut += cutsOfPlace) {
    const place = await engine.place()
    const sure = { entries: new Set<number>(), attachments: new Set<string>() }
    for (let round = 0; round <= cutsOfPlace && faults.length === 0; round++) {
      const isLast = round === cutsOfPlace
      const writer = new Writer({ ...place, first: round * 10_000, count: isLast ? 0 : 10_000 })
      await writer.said(round === 0 ? 'opening' : 'holds')
      if (round > 0) faults.push(...faultsOf(writer, sure, round))
      if (isLast) {
        await writer.ended
        total.acknowledged += sure.entries.size
        total.besides += (writer.held[0]?.entries.length ?? 0) - sure.entries.size
        break
      }
      await pause(Math.random() * (round === 0 ? 40 : 80))
      if (round === 0 && !writer.hasSaid('holds')) total.firstStarts++
      await engine.cutPower(writer)
      for (const number of writer.stored) sure.entries.add(number)
      for (const name of writer.attached) sure.attachments.add(name)
      await engine.powerOn()
    }
  }
  const { acknowledged, besides, firstStarts } = total
  const found = `${cuts} kills, ${firstStarts} of them before the first start was done; ${acknowledged} entries acknowledged, none lost, none doubled, ${besides} stored that could not be acknowledged any more`
  return {
    name: `kill -9 at random moments, ${engine.name}`,
    outcome: faults.length === 0 && acknowledged > 0 ? 'passed' : 'failed',
    says: faults.length === 0 ? found : faults.join('; '),
  }
}

function faultsOf(
  writer: Writer,
  sure: { readonly entries: ReadonlySet<number>; readonly attachments: ReadonlySet<string> },
  cuts: number,
): readonly string[] {
  const [held]: (Held | undefined)[] = writer.held
  if (held === undefined) return [`did not open again: ${JSON.stringify(writer.refused)}`]
  const numbers = held.entries.map(([number]) => number)
  const found = new Set(numbers)
  const files = new Set(held.attachments)
  const lost = [...sure.entries].filter((number) => !found.has(number))
  const lostFiles = [...sure.attachments].filter((name) => !files.has(name))
  const besides = found.size - sure.entries.size
  return [
    ...lost.map((number) => `entry ${number} was acknowledged and lost`),
    ...lostFiles.map((name) => `attachment ${name} was acknowledged and lost`),
    ...(found.size < numbers.length ? ['an entry is there twice'] : []),
    ...(besides > cuts ? [`${besides} entries are there that nobody acknowledged`] : []),
  ]
}
