import { row } from './row.ts'
import type { Shape } from './shape.ts'

/** Lists of quick flows for the implicit part of short steps (kernel/implicit.ts), in offsets into vectors. */
export interface OutflowLists {
  readonly exchanges: readonly number[]
  readonly outflows: readonly number[]
  readonly hubOutflows: readonly number[]
  readonly farOutflows: readonly number[]
}

/**
 * Quick flows by the state that they leave. Exchanges, which go both ways, are held apart; each begins at a hub, where
 * several may, and ends at a far end of its own.
 *
 * @param lines  of states, and of flows, in their vectors; there are so many quick states, and what ends at none of
 *   them ends in the line after the last
 * @throws Error where exchanges run otherwise, or another flow beside them: solved hub by hub, what they move would
 *   not arrive
 */
export function outflowLists(
  { from, to, quickFlows, exchanges = [] }: Shape,
  lines: Int32Array,
  flowLines: Int32Array,
  quick: number,
): OutflowLists {
  const lineOf = (state: number): number => (state >= 0 && lines[state] < quick ? lines[state] : quick)
  const hubs = new Set(exchanges.map((flow) => lineOf(from[flow])))
  const fars = new Set(exchanges.map((flow) => lineOf(to[flow])))
  const leaving = new Map<number, number[]>([...hubs, ...fars].map((line) => [line, []]))
  for (let flow = 0; flow < from.length; flow++) {
    const line = lineOf(from[flow])
    if (quickFlows?.[flow] !== 1 || exchanges.includes(flow) || line === quick) continue
    const list = leaving.get(line) ?? []
    leaving.set(line, list)
    list.push(flow)
    if ((hubs.has(line) || fars.has(line)) && fars.has(lineOf(to[flow])))
      throw new Error('A flow runs beside an exchange.')
  }
  if (fars.size < exchanges.length) throw new Error('Two exchanges end at one state.')
  if (hubs.has(quick) || fars.has(quick)) throw new Error('An exchange ends at no quick state.')
  if ([...hubs].some((line) => fars.has(line))) throw new Error('An exchange begins where another ends.')
  const list = (has: (line: number) => boolean): readonly number[] => [
    ...[...leaving]
      .filter(([line]) => has(line))
      .sort(([one], [other]) => one - other)
      .flatMap(([line, flows]) => [
        row * line,
        flows.length,
        ...flows.flatMap((flow) => [row * flowLines[flow], row * lineOf(to[flow])]),
      ]),
    -1,
  ]
  return {
    exchanges: exchanges.flatMap((flow) => [
      row * flowLines[flow],
      row * lineOf(from[flow]),
      row * lineOf(to[flow]),
    ]),
    outflows: list((line) => !hubs.has(line) && !fars.has(line)),
    hubOutflows: list((line) => hubs.has(line)),
    farOutflows: list((line) => fars.has(line)),
  }
}
