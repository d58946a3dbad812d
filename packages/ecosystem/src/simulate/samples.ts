import { type Kernel, row, type Span } from '../integrate/index.ts'
import type { Day } from '../log.ts'

/** Writes what lies inside the steps of some members: where, for whom, and how far into which step. */
type Read = Kernel['run']['between']

/** States on the days on which they are wanted, read inside the steps; no step is cut for them. */
export class Samples {
  private readonly at: number
  private readonly vector: number
  /** Of each member the first day that is still open, for all states and for the quick ones. */
  private readonly open: number[]
  private readonly openQuick: number[]

  constructor(
    private readonly kernel: Kernel,
    members: number,
    private readonly days: readonly Day[],
  ) {
    const { memory } = kernel
    this.vector = row * memory.shape.states
    this.at = memory.room(this.vector * days.length)
    this.open = Array.from({ length: members }, () => 0)
    this.openQuick = [...this.open]
  }

  /** A step is tried: what was read of the quick states in one that was not taken is read again. */
  begin(): void {
    for (const [member, next] of this.open.entries()) this.openQuick[member] = next
  }

  /** Quick states on the days inside the short steps that members have just taken. */
  short(spans: readonly Span[]): void {
    this.read(spans, this.openQuick, this.kernel.run.betweenQuick)
  }

  /** The other states on the days inside the steps that members have just taken. */
  long(spans: readonly Span[]): void {
    this.read(spans, this.open, this.kernel.run.between)
  }

  private read(spans: readonly Span[], open: number[], write: Read): void {
    const { days } = this
    const due = (member: number): boolean =>
      member < open.length && spans[member].taken && days[open[member]] <= spans[member].end
    for (let first = due(0), second = due(1); first || second; first = due(0), second = due(1)) {
      const which = Math.min(first ? open[0] : days.length, second ? open[1] : days.length)
      const now0 = first && open[0] === which
      const now1 = second && open[1] === which
      write(
        this.at + which * this.vector,
        now0 ? 1 : 0,
        now1 ? 1 : 0,
        spans[0].end - spans[0].day,
        spans[1].end - spans[1].day,
        shareOf(spans[0], days[which]),
        shareOf(spans[1], days[which]),
      )
      if (now0) open[0]++
      if (now1) open[1]++
    }
  }

  /** Days up to one that is not inside a step: the states as they are. */
  upTo(day: Day): void {
    const { memory } = this.kernel
    for (const member of this.open.keys())
      for (; this.days[this.open[member]] <= day; this.open[member]++)
        memory.set(this.at + this.open[member] * this.vector, member, memory.get(memory.at.start, member))
  }

  /** The states of each member on each day. */
  take(): readonly (readonly Float64Array[])[] {
    const { memory } = this.kernel
    return this.open.map((reached, member) =>
      this.days.slice(0, reached).map((_, which) => memory.get(this.at + which * this.vector, member)),
    )
  }
}

const shareOf = ({ day, end }: Span, wanted: Day): number =>
  wanted === end ? 1 : (wanted - day) / (end - day)
