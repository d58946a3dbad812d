import { bookBetween, type Kernel, row, type Span } from '../integrate/index.ts'
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

  constructor(
    private readonly kernel: Kernel,
    /** What events have moved so far, a list for each member. */
    private readonly eventFlows: readonly Float64Array[],
    private readonly days: readonly Day[],
  ) {
    const { memory } = kernel
    memory.doubles(memory.at.totals, (row / 8) * memory.shape.from.length).fill(0)
    this.marks = eventFlows.map(() => [])
  }

  of(member: number): readonly Mark[] {
    return this.marks[member]
  }

  /** Days inside the steps that members have just taken. */
  during(spans: readonly Span[]): void {
    for (const [member, marks] of this.marks.entries())
      while (spans[member].taken && this.days[marks.length] <= spans[member].end)
        marks.push(this.inside(spans[member], member, this.days[marks.length]))
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

  private inside({ day: from, end: to }: Span, member: number, day: Day): Mark {
    const { memory } = this.kernel
    const { at, shape } = memory
    const step = {
      from,
      to,
      before: memory.get(at.start, member),
      flows: this.flowsAt(at.wholeFlows, member),
      ratesBefore: this.flowsAt(at.flowsStart, member),
      ratesAfter: this.flowsAt(at.flows, member),
    }
    const flows = new Float64Array(shape.from.length)
    const states = new Float64Array(shape.states)
    bookBetween(step, day, shape, flows, states)
    const before = this.flowsAt(at.totals, member)
    for (let k = 0; k < flows.length; k++) flows[k] += before[k]
    return { day, states, flows, eventFlows: Float64Array.from(this.eventFlows[member]) }
  }

  private flowsAt(vector: number, member: number): Float64Array {
    return this.kernel.memory.getFlows(vector, member)
  }
}
