import { type Kernel, type Lane, row } from '../integrate/index.ts'
import type { Day } from '../log.ts'

/** States on the days on which they are wanted, read inside the steps; no step is cut for them. */
export class Samples {
  private readonly at: number
  private readonly vector: number
  /** Of each member, the first day that is still open. */
  private readonly next: number[]

  constructor(
    private readonly kernel: Kernel,
    members: number,
    private readonly days: readonly Day[],
  ) {
    const { memory } = kernel
    this.vector = row * memory.shape.states
    this.at = memory.room(this.vector * days.length)
    this.next = Array.from({ length: members }, () => 0)
  }

  /** Days inside the steps that the lanes have just taken. */
  during(lanes: readonly Lane[]): void {
    const { days, kernel, next } = this
    for (;;) {
      const due = lanes.map((lane, member) => lane.taken && days[next[member]] <= lane.end)
      const which = Math.min(...next.filter((_, member) => due[member]))
      if (which === Number.POSITIVE_INFINITY) return
      const [first, second] = lanes.map((_, member) => due[member] && next[member] === which)
      const share = ({ day, end }: Lane): number =>
        days[which] === end ? 1 : (days[which] - day) / (end - day)
      const [one, other] = lanes
      kernel.run.between(
        this.at + which * this.vector,
        first ? 1 : 0,
        second ? 1 : 0,
        one.end - one.day,
        other.end - other.day,
        share(one),
        share(other),
      )
      if (first) next[0]++
      if (second) next[1]++
    }
  }

  /** Days up to one that is not inside a step: the states as they are. */
  upTo(day: Day): void {
    const { memory } = this.kernel
    for (const member of this.next.keys())
      for (; this.days[this.next[member]] <= day; this.next[member]++)
        memory.set(this.at + this.next[member] * this.vector, member, memory.get(memory.at.start, member))
  }

  /** The states of each member on each day. */
  take(): readonly (readonly Float64Array[])[] {
    const { memory } = this.kernel
    return this.next.map((reached, member) =>
      this.days.slice(0, reached).map((_, which) => memory.get(this.at + which * this.vector, member)),
    )
  }
}
