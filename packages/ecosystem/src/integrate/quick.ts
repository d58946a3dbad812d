import { FirstSteps } from './first-steps.ts'
import type { Kernel } from './kernel.ts'
import { paceOf } from './pace.ts'
import type { IntegratorSettings } from './settings.ts'
import type { Watch } from './watch.ts'

const members = [0, 1] as const
/** Days; what is too quick even for this is left to the limiter. */
const shortestQuick = 1e-4

/** One member's short steps. */
interface Walk {
  /** Where it is and where it is to go; the step that is tried, and where it ends. */
  day: number
  to: number
  end: number
  days: number
  taken: boolean
  /** The step that the error allows, and as it was when the long step began. */
  step: number
  stepBefore: number
  readonly firstSteps: FirstSteps
  evaluations: number
}

/**
 * Steps the quick processes (and the few states that they change or read) through the ways between the
 * stages of a step, in short steps of their own, while slow processes give what they gave at the stages.
 */
export class Quick {
  private readonly walks: readonly [Walk, Walk]
  private readonly any: boolean

  constructor(
    private readonly kernel: Kernel,
    private readonly settings: IntegratorSettings,
    private readonly strictness: number,
  ) {
    const walk = (): Walk => ({
      day: 0,
      to: 0,
      end: 0,
      days: 0,
      taken: false,
      step: 0.02,
      stepBefore: 0.02,
      firstSteps: new FirstSteps(),
      evaluations: 0,
    })
    this.walks = [walk(), walk()]
    this.any = kernel.memory.hasQuick
  }

  /** Sets out from a day on which something may have changed; `after` names what. */
  begin(after: string): void {
    for (const walk of this.walks) walk.stepBefore = walk.firstSteps.after(after, walk.stepBefore)
  }

  /** Sets out on a long step, perhaps once more. */
  beginStep(): void {
    this.kernel.run.beginQuick()
    for (const walk of this.walks) walk.step = walk.stepBefore
  }

  /** The long step of a member was taken. */
  took(member: 0 | 1): void {
    const walk = this.walks[member]
    walk.stepBefore = walk.step
  }

  /** Walks each member to a day; `watch` is told of every short step that some member took. */
  walk(from: readonly [number, number], to: readonly [number, number], watch?: Watch): void {
    if (!this.any) return
    for (const member of members) {
      const walk = this.walks[member]
      walk.day = from[member]
      walk.to = to[member]
      if (walk.day < walk.to) walk.evaluations++
    }
    const [one, other] = this.walks
    while (one.day < one.to || other.day < other.to) this.attempt(watch)
  }

  /** Evaluations of a member since it was last asked. */
  evaluationsOf(member: 0 | 1): number {
    const { evaluations } = this.walks[member]
    this.walks[member].evaluations = 0
    return evaluations
  }

  private attempt(watch?: Watch): void {
    const { kernel, settings, strictness, walks } = this
    const [one, other] = walks
    for (const walk of walks) plan(walk)
    kernel.run.stepQuick(one.days, other.days)
    kernel.run.errorQuick(one.days, other.days, settings.tolerance, strictness)
    const errors = kernel.answers()
    for (const member of members) {
      const walk = walks[member]
      if (walk.days === 0) continue
      walk.evaluations += 2
      const error = errors[member]
      // What is no number is taken, and stops the run where the whole step is looked at.
      if (error > 1 && walk.days > shortestQuick) {
        walk.step = Math.max(walk.days * paceOf(error), shortestQuick)
        continue
      }
      walk.taken = true
      const proposal = walk.days * paceOf(error)
      walk.step = walk.days < walk.step ? Math.max(proposal, walk.step) : proposal
      walk.firstSteps.took(walk.step)
    }
    if (!one.taken && !other.taken) return
    watch?.short(walks)
    // One that waits is where it was at the end of its step too.
    kernel.run.takeQuick(one.taken || one.days === 0 ? 1 : 0, other.taken || other.days === 0 ? 1 : 0)
    for (const walk of walks) if (walk.taken) walk.day = walk.end
  }
}

function plan(walk: Walk): void {
  const left = walk.to - walk.day
  walk.taken = false
  walk.days = 0
  if (!(left > 0)) return
  const parts = Math.ceil(left / Math.max(walk.step, shortestQuick) - 1e-9)
  walk.days = parts > 1 ? left / parts : left
  walk.end = parts > 1 ? Math.min(walk.to, walk.day + walk.days) : walk.to
}
