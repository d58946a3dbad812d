import type { Kernel } from './kernel.ts'

/** Iterations at most: a nonlinear power iteration may wander, and the error control catches what it misses. */
const mostIterations = 40
const safety = 1.2
/** Of the tolerance: small against what the formulas bend over. */
const shift = 0.01

const members = [0, 1] as const

/**
 * Fastest decay by slow processes near the start of a step, per day: by power iteration in the norm of the
 * tolerances, and no slower than any account empties, since the iteration is blind to an account that moves
 * no other. The direction found is kept for the next call, which then needs few iterations.
 */
export class FastestDecay {
  /** Of each member the largest found by the iteration when it was last asked for. */
  private readonly radius: [number, number] = [0, 0]

  constructor(
    private readonly kernel: Kernel,
    private readonly relative: number,
    private readonly strictness: number,
  ) {
    for (const member of members) this.mix(member)
  }

  /** A start with a part in every direction, and no chance: the same run gives the same bits. */
  private mix(member: number): void {
    const { memory } = this.kernel
    const mixed = Float64Array.from({ length: memory.shape.states }, (_, i) => (i % 2 === 0 ? 1 : -0.7))
    memory.set(memory.at.direction, member, mixed)
  }

  /**
   * Finds it for the members that are meant; `found` is told it, and how many evaluations it took. The rates at
   * the start of the step are there before, and are there after.
   */
  find(
    wants: readonly boolean[],
    found: (member: 0 | 1, fastest: number, evaluations: number) => void,
  ): void {
    const { run } = this.kernel
    const emptying = this.emptying()
    let size = this.length()
    for (const member of members) if (!(size[member] > 0)) this.mix(member)
    if (!(size[0] > 0 && size[1] > 0)) size = this.length()
    const { radius } = this
    const evaluations = [1, 1]
    const open = [...wants]
    for (let iteration = 0; iteration < mostIterations && (open[0] || open[1]); iteration++) {
      run.shift(scaleOf(size[0]), scaleOf(size[1]))
      run.turn(open[0] ? 1 : 0, open[1] ? 1 : 0)
      const lengths = this.length()
      for (const member of members) {
        if (!open[member]) continue
        evaluations[member]++
        size[member] = lengths[member]
        const next = lengths[member] / shift
        const change = Math.abs(next - radius[member])
        open[member] = next > 0 && !(iteration > 0 && change <= 0.02 * next)
        if (next > 0) radius[member] = next
      }
    }
    for (const member of members)
      if (wants[member])
        found(member, Math.max(radius[member], emptying[member]) * safety, evaluations[member])
  }

  /** What leaves an account in a day as a share of what it holds, the largest of each member. */
  private emptying(): readonly number[] {
    const { kernel } = this
    kernel.withFlows(() => kernel.run.begin(1))
    kernel.run.fastestLoss(shift)
    return Array.from(kernel.answers())
  }

  private length(): number[] {
    this.kernel.run.length(this.relative, this.strictness)
    return Array.from(this.kernel.answers())
  }
}

const scaleOf = (size: number): number => (size > 0 ? shift / size : 0)
