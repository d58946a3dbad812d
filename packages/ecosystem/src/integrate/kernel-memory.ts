import { coefficientTable } from './coefficient-table.ts'
import type { Shape } from './shape.ts'

/** Bytes of a number of both members. */
export const row = 16
const page = 65_536
/** The kernel has nothing of its own below this. */
const first = 1024
const blockBytes = 36

/** Sizes beside those of the equations. */
export interface Extent {
  readonly settings: number
  readonly parameters: number
  readonly gathered: number
  readonly eventFluxes: number
  readonly blocks: number
}

/**
 * The memory of one kernel, laid out for one system of equations and two members side by side. States
 * inside come first, so that a step runs through them alone; the last line of a vector takes what goes
 * nowhere.
 */
export class KernelMemory {
  private end = first
  /** Line of each state in a vector. */
  readonly lines: Int32Array
  readonly inside: number
  readonly at
  private readonly addresses: number

  constructor(
    readonly memory: WebAssembly.Memory,
    readonly shape: Shape,
    readonly extent: Extent,
  ) {
    const { states, tolerance, from, to } = shape
    const order = [...tolerance.keys()].sort(
      (a, b) => Number(tolerance[a] === 0) - Number(tolerance[b] === 0),
    )
    this.lines = new Int32Array(states)
    for (const [line, state] of order.entries()) this.lines[state] = line
    this.inside = tolerance.filter((one) => one > 0).length
    const overStates = (): number => this.take(row * (states + 1))
    const overFlows = (): number => this.take(row * from.length)
    const table = coefficientTable()
    this.addresses = this.take(4 * 22)
    this.at = {
      start: overStates(),
      stage: overStates(),
      slopeStart: overStates(),
      slope: overStates(),
      lastChange: overStates(),
      changeBefore: overStates(),
      tolerance: overStates(),
      direction: overStates(),
      losses: overStates(),
      flows: overFlows(),
      flowsStart: overFlows(),
      wholeFlows: overFlows(),
      totals: overFlows(),
      ends: this.take(8 * from.length),
      gathered: this.take(row * extent.gathered),
      coefficients: this.take(table.byteLength),
      answer: this.take(row),
      blocks: this.take(blockBytes * extent.blocks),
      settings: this.take(row * extent.settings),
      parameters: this.take(row * extent.parameters),
      eventFlows: this.take(row * extent.eventFluxes),
    }
    this.doubles(this.at.coefficients, table.length).set(table)
    const offset = (state: number): number => (state < 0 ? -1 : row * this.lines[state])
    this.integers(this.at.ends, 2 * from.length).set(
      Array.from(from, (left, k) => [offset(left), offset(to[k])]).flat(),
    )
    this.setAll(this.at.tolerance, tolerance)
  }

  /** Where the addresses lie, in the order in which `kernel/memory.ts` reads them. */
  place(): number {
    const { at, shape, extent } = this
    this.integers(this.addresses, 22).set([
      row * this.inside,
      row * shape.states,
      row * shape.from.length,
      row * extent.gathered,
      at.start,
      at.stage,
      at.slopeStart,
      at.slope,
      at.lastChange,
      at.changeBefore,
      at.tolerance,
      at.direction,
      at.losses,
      at.flows,
      at.flowsStart,
      at.wholeFlows,
      at.totals,
      at.ends,
      at.gathered,
      at.coefficients,
      at.answer,
      at.blocks,
    ])
    return this.addresses
  }

  /** Room for some bytes, on a line of the cache of its own. Views taken before are no longer good. */
  take(bytes: number): number {
    const at = this.end
    this.end += Math.ceil(bytes / 64) * 64
    const missing = this.end - this.memory.buffer.byteLength
    if (missing > 0) this.memory.grow(Math.ceil(missing / page))
    return at
  }

  /** Room beyond all that is laid out, for one run: the next run has the same. Views taken before are no longer good. */
  room(bytes: number): number {
    const at = this.take(bytes)
    this.end = at
    return at
  }

  doubles(at: number, length: number): Float64Array {
    return new Float64Array(this.memory.buffer, at, length)
  }

  integers(at: number, length: number): Int32Array {
    return new Int32Array(this.memory.buffer, at, length)
  }

  /** A table of addresses, in room of its own. */
  table(addresses: readonly number[]): number {
    const at = this.take(4 * addresses.length)
    this.integers(at, addresses.length).set(addresses)
    return at
  }

  /** Address of a state's number in a vector; of the line that takes what goes nowhere for an account outside. */
  lineOf(vector: number, state: number): number {
    return vector + row * this.lines[state]
  }
  nowhere(vector: number): number {
    return vector + row * this.shape.states
  }

  /** Writes one member's states into a vector. */
  set(vector: number, member: number, states: Float64Array): void {
    const lines = this.doubles(vector, 2 * states.length)
    for (let i = 0; i < states.length; i++) lines[2 * this.lines[i] + member] = states[i]
  }

  /** One member's states out of a vector. */
  get(vector: number, member: number, into = new Float64Array(this.shape.states)): Float64Array {
    const lines = this.doubles(vector, 2 * into.length)
    for (let i = 0; i < into.length; i++) into[i] = lines[2 * this.lines[i] + member]
    return into
  }

  /** Two numbers that the kernel handed back. */
  getAnswer(into: Float64Array): Float64Array {
    into.set(this.doubles(this.at.answer, 2))
    return into
  }

  /** The same states for both members. */
  private setAll(vector: number, states: Float64Array): void {
    this.set(vector, 0, states)
    this.set(vector, 1, states)
  }

  /** Writes one member's numbers where they lie in their own order: parameters, settings, flows. */
  setList(at: number, member: number, numbers: Float64Array): void {
    const list = this.doubles(at, 2 * numbers.length)
    for (let i = 0; i < numbers.length; i++) list[2 * i + member] = numbers[i]
  }
  getList(at: number, member: number, into: Float64Array): Float64Array {
    const list = this.doubles(at, 2 * into.length)
    for (let i = 0; i < into.length; i++) into[i] = list[2 * i + member]
    return into
  }
}
