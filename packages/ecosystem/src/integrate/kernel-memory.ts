import { coefficientTable } from './coefficient-table.ts'
import { outflowLists } from './outflow-lists.ts'
import { row } from './row.ts'
import type { Shape } from './shape.ts'

const page = 65_536
/** The kernel has nothing of its own below this. */
const first = 1024
const blockBytes = 40

/** Sizes beside those of the equations. */
export interface Extent {
  readonly settings: number
  readonly parameters: number
  /** Sums that processes share, and how many of them, the first ones, quick processes add to. */
  readonly sums: number
  readonly quickSums: number
  readonly eventFluxes: number
  readonly blocks: number
}

/** The order in which `kernel/memory.ts` reads where things lie, after the sizes. */
const order = [
  'start',
  'stage',
  'slopeStart',
  'slope',
  'lastChange',
  'changeBefore',
  'quickSlopeStart',
  'quickSlope',
  'quickStart',
  'quickFirst',
  'quickSecond',
  'damping',
  'implicitDays',
  'released',
  'forcing',
  'tolerance',
  'direction',
  'losses',
  'flows',
  'flowsStart',
  'wholeFlows',
  'totals',
  'quickFlowsStart',
  'quickWholeFlows',
  'quickShares',
  'pulls',
  'pullsStart',
  'pullsBetween',
  'exchangeAnswers',
  'exchanges',
  'outflows',
  'hubOutflows',
  'farOutflows',
  'ends',
  'gathered',
  'gatheredStart',
  'gatheredBefore',
  'coefficients',
  'answer',
  'blocks',
] as const

/**
 * The memory of one kernel, laid out for one system of equations and two members side by side. States that
 * quick processes change or read come first, then the other states inside, then those outside; the last
 * line of a vector takes what goes nowhere. Flows of quick processes come first too.
 */
export class KernelMemory {
  private end = first
  private whole = new Float64Array(0)
  /** Line of each state in a vector over states, of each flow in one over flows. */
  readonly lines: Int32Array
  readonly flowLines: Int32Array
  readonly at
  /** Address of the list of sizes and addresses. */
  readonly places: number

  constructor(
    readonly memory: WebAssembly.Memory,
    readonly shape: Shape,
    readonly extent: Extent,
  ) {
    const { states, tolerance, from, to, exchanges = [] } = shape
    const isQuick = (state: number): boolean => shape.quickStates?.[state] === 1 && tolerance[state] > 0
    this.lines = ranked(states, (state) => (isQuick(state) ? 0 : tolerance[state] > 0 ? 1 : 2))
    this.flowLines = ranked(from.length, (flow) => (shape.quickFlows?.[flow] === 1 ? 0 : 1))
    const quick = count(states, isQuick)
    const inside = count(states, (state) => tolerance[state] > 0)
    const quickFlows = count(from.length, (flow) => shape.quickFlows?.[flow] === 1)
    const overStates = (): number => this.take(row * (states + 1))
    // The last line takes what goes nowhere.
    const overQuick = (): number => this.take(row * (quick + 1))
    const overFlows = (): number => this.take(row * from.length)
    const overQuickFlows = (): number => this.take(row * quickFlows)
    const overPulls = (): number => this.take(2 * row * exchanges.length)
    const table = coefficientTable()
    const { quickSums, sums } = extent
    const sizes = [quick, inside, states, quickFlows, from.length, quickSums, sums, 2 * exchanges.length].map(
      (of) => row * of,
    )
    const lists = outflowLists(shape, this.lines, this.flowLines, quick)
    this.places = this.take(4 * (sizes.length + order.length))
    this.at = {
      start: overStates(),
      stage: overStates(),
      slopeStart: overStates(),
      slope: overStates(),
      lastChange: overStates(),
      changeBefore: overStates(),
      quickSlopeStart: overQuick(),
      quickSlope: overQuick(),
      quickStart: overQuick(),
      quickFirst: overQuick(),
      quickSecond: overQuick(),
      damping: overQuick(),
      implicitDays: overQuick(),
      released: overQuick(),
      forcing: overQuick(),
      tolerance: overStates(),
      direction: overStates(),
      losses: overStates(),
      flows: overFlows(),
      flowsStart: overFlows(),
      wholeFlows: overFlows(),
      totals: overFlows(),
      quickFlowsStart: overQuickFlows(),
      quickWholeFlows: overQuickFlows(),
      quickShares: overQuickFlows(),
      pulls: overPulls(),
      pullsStart: overPulls(),
      pullsBetween: overPulls(),
      exchangeAnswers: overPulls(),
      exchanges: this.table(lists.exchanges),
      outflows: this.table(lists.outflows),
      hubOutflows: this.table(lists.hubOutflows),
      farOutflows: this.table(lists.farOutflows),
      ends: this.take(8 * from.length),
      gathered: this.take(row * sums),
      gatheredStart: this.take(row * sums),
      gatheredBefore: this.take(row * sums),
      coefficients: this.take(table.byteLength),
      answer: this.take(row),
      blocks: this.take(blockBytes * extent.blocks),
      settings: this.take(row * extent.settings),
      parameters: this.take(row * extent.parameters),
      eventFlows: this.take(row * extent.eventFluxes),
    }
    const { at } = this
    this.integers(this.places, sizes.length + order.length).set([...sizes, ...order.map((name) => at[name])])
    this.doubles(at.coefficients, table.length).set(table)
    const offset = (state: number): number => (state < 0 ? -1 : row * this.lines[state])
    const ends = this.integers(at.ends, 2 * from.length)
    for (const [flow, line] of this.flowLines.entries())
      ends.set([offset(from[flow]), offset(to[flow])], 2 * line)
    this.setAll(at.tolerance, tolerance)
  }

  /** Whether any process is quick. */
  get hasQuick(): boolean {
    return this.shape.quickStates?.includes(1) === true
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

  /** One member's states out of a vector over the quick states; zero for the others. */
  getQuick(vector: number, member: number): Float64Array {
    const { states, quickStates, tolerance } = this.shape
    const into = new Float64Array(states)
    const lines = this.doubles(vector, 2 * states)
    for (let i = 0; i < states; i++)
      if (quickStates?.[i] === 1 && tolerance[i] > 0) into[i] = lines[2 * this.lines[i] + member]
    return into
  }

  /** Two numbers that the kernel handed back. */
  getAnswer(into: Float64Array): Float64Array {
    // Asked for in every short step: a view is dearer than what is read through it, and is good until the memory grows.
    if (this.whole.buffer !== this.memory.buffer) this.whole = new Float64Array(this.memory.buffer)
    const place = this.at.answer / this.whole.BYTES_PER_ELEMENT
    into[0] = this.whole[place]
    into[1] = this.whole[place + 1]
    return into
  }

  /** The same states for both members. */
  private setAll(vector: number, states: Float64Array): void {
    this.set(vector, 0, states)
    this.set(vector, 1, states)
  }

  /** One member's numbers of a vector over flows. */
  setFlows(vector: number, member: number, flows: Float64Array): void {
    const lines = this.doubles(vector, 2 * flows.length)
    for (let k = 0; k < flows.length; k++) lines[2 * this.flowLines[k] + member] = flows[k]
  }
  getFlows(
    vector: number,
    member: number,
    into: Float64Array = new Float64Array(this.shape.from.length),
  ): Float64Array {
    const lines = this.doubles(vector, 2 * into.length)
    for (let k = 0; k < into.length; k++) into[k] = lines[2 * this.flowLines[k] + member]
    return into
  }

  /** The flows of quick processes alone, in a vector over these; zero for the others. */
  getQuickFlows(vector: number, member: number): Float64Array {
    const { from, quickFlows } = this.shape
    const flows = new Float64Array(from.length)
    const lines = this.doubles(vector, 2 * from.length)
    for (let k = 0; k < flows.length; k++)
      if (quickFlows?.[k] === 1) flows[k] = lines[2 * this.flowLines[k] + member]
    return flows
  }

  /** Writes one member's numbers where they lie in their own order: parameters, settings, flows of events. */
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

const count = (length: number, is: (index: number) => boolean): number =>
  Array.from({ length }, (_, index) => index).filter(is).length

/** Where each thing comes when things are sorted by rank, those of one rank in their own order. */
export function ranked(length: number, rank: (index: number) => number): Int32Array {
  const sorted = Array.from({ length }, (_, index) => index).sort((a, b) => rank(a) - rank(b) || a - b)
  const lines = new Int32Array(length)
  for (const [line, index] of sorted.entries()) lines[index] = line
  return lines
}
