import { binary } from 'virtual:holdfast-kernel'
import { type Extent, KernelMemory } from './kernel-memory.ts'
import type { Shape } from './shape.ts'

/** What the compiled module offers (kernel/index.ts); a mask of members is two numbers, 0 or 1. */
export interface Exports {
  readonly memory: WebAssembly.Memory
  readonly place: (at: number) => void
  readonly keepBooks: (on: number) => void
  readonly useForeign: (on: number) => void
  readonly settle: (block: number) => void
  readonly happen: (block: number) => void
  readonly begin: (known: number) => void
  readonly leaveOut: (block: number) => void
  readonly putIn: (block: number) => void
  readonly firstStage: (...of: StepOfBoth) => void
  readonly nextStage: (number: number, ...of: StepOfBoth) => void
  readonly closeStages: () => void
  readonly beginQuick: () => void
  readonly stepQuick: (days0: number, days1: number) => void
  readonly errorQuick: (days0: number, days1: number, relative: number, strictness: number) => void
  readonly takeQuick: (first: number, second: number) => void
  readonly lowest: () => void
  readonly error: (days0: number, days1: number, relative: number, strictness: number) => void
  readonly take: (first: number, second: number) => void
  readonly restage: (first: number, second: number) => void
  readonly shift: (scale0: number, scale1: number) => void
  readonly turn: (first: number, second: number) => void
  readonly length: (relative: number, strictness: number) => void
  readonly fastestLoss: (least: number) => void
  readonly between: (...of: Reading) => void
  readonly betweenQuick: (...of: Reading) => void
}

/** Stages and days of both members, and one over the days to the stage. */
type StepOfBoth = readonly [
  stages0: number,
  stages1: number,
  days0: number,
  days1: number,
  per0: number,
  per1: number,
]

/** Where to write, for whom, and how far into which step, for both members. */
type Reading = readonly [
  into: number,
  first: number,
  second: number,
  days0: number,
  days1: number,
  share0: number,
  share1: number,
]

let compiled: WebAssembly.Module | undefined

/** The module, compiled when it is first asked for. */
function module(): WebAssembly.Module {
  compiled ??= new WebAssembly.Module(Uint8Array.from(atob(binary), (character) => character.charCodeAt(0)))
  return compiled
}

/**
 * The compiled kernel with a memory of its own, in which two members lie side by side. It does arithmetic
 * on both at once and decides nothing: which step each takes is decided by the integrator.
 */
export class Kernel {
  readonly run: Exports
  readonly memory: KernelMemory
  private readonly answer = new Float64Array(2)
  private books = false

  /** @param rates  equations other than the declared ones: they write slopes and flows into the memory */
  constructor(shape: Shape, extent: Extent, rates?: (memory: KernelMemory) => void) {
    const evaluate = { foreignRates: () => rates?.(this.memory) }
    // The exports of a module have no types of their own: these are held by the tests that call them.
    this.run = new WebAssembly.Instance(module(), { evaluate }).exports as unknown as Exports
    this.memory = new KernelMemory(this.run.memory, shape, extent)
    this.run.place(this.memory.places)
    this.run.useForeign(rates ? 1 : 0)
  }

  /** Whether single flows are written beside the net rates; these have the same bits with and without. */
  keepBooks(on: boolean): void {
    this.books = on
    this.run.keepBooks(on ? 1 : 0)
  }

  /** Does something for which single flows are needed, books or no books. */
  withFlows(something: () => void): void {
    const { books } = this
    this.run.keepBooks(1)
    something()
    this.run.keepBooks(books ? 1 : 0)
  }

  /** What the last function handed back, a number for each member; overwritten by the next. */
  answers(): Float64Array {
    return this.memory.getAnswer(this.answer)
  }
}
