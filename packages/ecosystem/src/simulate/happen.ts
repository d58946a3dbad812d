import type { Block, Model } from '../assemble/model.ts'
import { type LimiterWork, limit, limiterWork, type Shape, scatter } from '../integrate/index.ts'
import { type Slots, slotsOf } from './change-settings.ts'
import type { ModelKernel } from './model-kernel.ts'
import type { Happening } from './moment.ts'
import { ends } from './shape-of.ts'

/** The part of a model that one event touches. */
interface Touched {
  readonly block: Block
  /** States at the ends of its flows; the ends are places in this list. */
  readonly states: Int32Array
  readonly shape: Pick<Shape, 'states' | 'from' | 'to' | 'floored'>
  readonly held: Float64Array
  readonly flows: Float64Array
  readonly work: LimiterWork
}

/** Worked out when an event first happens to a model. */
const touchedInside = new WeakMap<Block, Touched>()
const touchedWithBooks = new WeakMap<Block, Touched>()

/**
 * Events are flows at an instant: worked out from the states before, limited alike, added whole. One maker
 * for a run; `sums` are the flows of all events so far, a list for each member. Accounts outside change with
 * books alone, as they do between events.
 */
export function happenings(
  model: Model,
  compiled: ModelKernel,
  sums: readonly Float64Array[],
  books: boolean,
): (moment: Happening) => void {
  const slots: Slots = slotsOf(model)
  const touched = books ? touchedWithBooks : touchedInside
  const { memory } = compiled.kernel
  const apply = ({ block, states, shape, held, flows, work }: Touched, member: number): void => {
    const amounts = memory.doubles(memory.at.eventFlows, 2 * model.eventFluxes.length)
    const start = memory.doubles(memory.at.start, 2 * model.states.length)
    for (let k = 0; k < flows.length; k++) flows[k] = amounts[2 * (block.firstFlux + k) + member]
    for (let i = 0; i < states.length; i++) held[i] = start[2 * memory.lines[states[i]] + member]
    limit(shape, held, flows, work)
    scatter(shape, flows, held)
    for (let i = 0; i < states.length; i++) start[2 * memory.lines[states[i]] + member] = held[i]
    for (let k = 0; k < flows.length; k++) sums[member][block.firstFlux + k] += flows[k]
  }
  return (moment) => {
    const block = model.events.get(moment.happens)
    if (!block) return
    const part = touched.get(block) ?? touchedBy(model, block, books)
    touched.set(block, part)
    const own = Object.entries(moment.with).flatMap(([id, value]) => {
      const slot = slots.get(id)
      return slot === undefined ? [] : [{ slot, value }]
    })
    compiled.happen(block, own)
    for (const member of sums.keys()) apply(part, member)
  }
}

function touchedBy(model: Model, block: Block, books: boolean): Touched {
  const fluxes = model.eventFluxes.slice(
    block.firstFlux,
    block.firstFlux + block.names.length * block.compiled.fluxes,
  )
  const { from, to } = ends(fluxes)
  const inside = (state: number): boolean => {
    const entry = model.states[state]
    return entry.kind === 'plain' || entry.account.side === 'inside'
  }
  const kept = (state: number): boolean => state >= 0 && (books || inside(state))
  const states = Int32Array.from(new Set([...from, ...to].filter(kept)))
  const places = new Map(Array.from(states, (state, place) => [state, place]))
  const placed = (list: Int32Array): Int32Array => list.map((state) => places.get(state) ?? -1)
  return {
    block,
    states,
    shape: {
      states: states.length,
      from: placed(from),
      to: placed(to),
      floored: Uint8Array.from(states, (state) => (inside(state) ? 1 : 0)),
    },
    held: new Float64Array(states.length),
    flows: new Float64Array(fluxes.length),
    work: limiterWork(states.length),
  }
}
