import { bookBetween, flowsUpTo, type Kernel, row, type Span } from '../integrate/index.ts'
import type { Day } from '../log.ts'

/** The books at one day: states, and what has flowed since the start. */
export interface Mark {
  readonly day: Day
  readonly states: Float64Array
  readonly flows: Float64Array
  readonly eventFlows: Float64Array
}

/** Closes the books of each member on the days asked for, inside the steps. */
export class Marks {
  private readonly marks: readonly Mark[][]
  /** Of each member what quick processes have moved in the step that is tried, at each mark inside it. */
  private readonly quick: readonly Float64Array[][]

  constructor(
    private readonly kernel: Kernel,
    /** What events have moved so far, a list for each member. */
    private readonly eventFlows: readonly Float64Array[],
    private readonly days: readonly Day[],
  ) {
    const { memory } = kernel
    memory.doubles(memory.at.totals, (row / 8) * memory.shape.from.length).fill(0)
    this.marks = eventFlows.map(() => [])
    this.quick = eventFlows.map(() => [])
  }

  of(member: number): readonly Mark[] {
    return this.marks[member]
  }

  /** A step is tried: what was looked up in one that was not taken is looked up again. */
  begin(): void {
    for (const list of this.quick) list.length = 0
  }

  /** Days inside the short steps that members have just taken. */
  short(spans: readonly Span[]): void {
    for (const [member, list] of this.quick.entries())
      for (;;) {
        const day = this.days[this.marks[member].length + list.length]
        if (!spans[member].taken || !(day <= spans[member].end)) break
        list.push(this.quickFlows(spans[member], member, day))
      }
  }

  /** Days inside the steps that members have just taken. */
  long(spans: readonly Span[]): void {
    for (const [member, marks] of this.marks.entries()) {
      const quick = this.quick[member].values()
      while (spans[member].taken && this.days[marks.length] <= spans[member].end)
        marks.push(this.inside(spans[member], member, this.days[marks.length], quick.next().value))
    }
  }

  /** Days up to one that is not inside a step: the books as they are. */
  upTo(day: Day): void {
    const { memory } = this.kernel
    for (const [member, marks] of this.marks.entries())
      while (this.days[marks.length] <= day)
        marks.push({
          day: this.days[marks.length],
          states: memory.get(memory.at.start, member),
          flows: this.flowsAt(memory.at.totals, member),
          eventFlows: Float64Array.from(this.eventFlows[member]),
        })
  }

  private inside(
    { day: from, end: to }: Span,
    member: number,
    day: Day,
    quickFlows: Float64Array | undefined,
  ): Mark {
    const { memory } = this.kernel
    const { at, shape } = memory
    const step = {
      from,
      to,
      before: memory.get(at.start, member),
      flows: this.flowsAt(at.wholeFlows, member),
      ratesBefore: this.flowsAt(at.flowsStart, member),
      ratesAfter: this.flowsAt(at.flows, member),
      ...(quickFlows ? { quickFlows } : {}),
    }
    const flows = new Float64Array(shape.from.length)
    const states = new Float64Array(shape.states)
    bookBetween(step, day, shape, flows, states)
    const before = this.flowsAt(at.totals, member)
    for (let k = 0; k < flows.length; k++) flows[k] += before[k]
    return { day, states, flows, eventFlows: Float64Array.from(this.eventFlows[member]) }
  }

  /** What quick processes have moved since the step began until a day inside a short step. */
  private quickFlows({ day: from, end: to }: Span, member: number, day: Day): Float64Array {
    const { at, shape } = this.kernel.memory
    const overQuick = (vector: number): Float64Array => this.kernel.memory.getQuickFlows(vector, member)
    const flows = new Float64Array(shape.from.length)
    const step = {
      from,
      to,
      flows: overQuick(at.quickWholeFlows),
      ratesBefore: overQuick(at.quickFlowsStart),
      ratesAfter: overQuick(at.flows),
    }
    flowsUpTo(step, day, flows)
    const before = overQuick(at.wholeFlows)
    for (let k = 0; k < flows.length; k++) flows[k] += before[k]
    return flows
  }

  private flowsAt(vector: number, member: number): Float64Array {
    return this.kernel.memory.getFlows(vector, member)
  }
}
