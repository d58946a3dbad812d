import { FirstSteps } from './first-steps.ts'
import { paceOf } from './pace.ts'
import type { IntegratorSettings, Statistics } from './settings.ts'

/** Accepted steps after which the fastest decay is looked for again. */
const radiusHolds = 50

/**
 * One member's own way through time: its day, its step, its stages. Two members share the arithmetic and
 * nothing else, so that each has the bits that it would have alone.
 */
export class Lane {
  readonly statistics: Statistics = { steps: 0, rejected: 0, limited: 0, evaluations: 0, quickEvaluations: 0 }
  day = Number.POSITIVE_INFINITY
  /** The step that is tried: where it ends and how long it is; 0 days where the member waits. */
  end = 0
  days = 0
  stages = 0
  taken = false
  /** What leaves some account has to be scaled in this step. */
  limit = false
  /** Fastest decay by slow processes, per day. */
  fastest = 0
  private step = 0.1
  private sinceRadius = radiusHolds
  private rejectedBefore = false
  private readonly firstSteps = new FirstSteps()

  constructor(private readonly settings: IntegratorSettings) {}

  /** Sets out from a day on which something may have changed; `after` names what. */
  begin(day: number, after: string): void {
    this.day = day
    this.step = this.firstSteps.after(after, this.step)
  }

  /** The next step towards a day. */
  plan(to: number): void {
    const left = to - this.day
    this.taken = false
    this.limit = false
    this.stages = 0
    this.days = 0
    if (!(left > 0)) return
    const { shortest, longest } = this.settings
    const step = Math.max(shortest, Math.min(this.step, longest))
    // As many equal steps as are left, rather than whole ones and a crumb.
    const parts = Math.ceil(left / step - 1e-9)
    this.days = parts > 1 ? left / parts : left
    this.end = parts > 1 ? this.day + this.days : to
  }

  get waits(): boolean {
    return this.days === 0
  }
  get wantsRadius(): boolean {
    return !this.waits && this.sinceRadius >= radiusHolds
  }
  get shortest(): boolean {
    return this.days <= this.settings.shortest * (1 + 1e-6)
  }

  foundRadius(fastest: number): void {
    this.fastest = fastest
    this.sinceRadius = 0
  }

  /** A shorter step than planned, since the one planned would need too many stages. */
  shorten(days: number): void {
    this.days = Math.max(days, this.settings.shortest)
    this.end = this.day + this.days
    this.step = this.days
  }

  /** The step is to be tried again, shorter; until then the member waits. */
  reject(factor: number): void {
    this.statistics.rejected++
    this.step = Math.max(this.days * factor, this.settings.shortest)
    // One step too long is nothing; two after another may be too few stages.
    if (this.rejectedBefore) this.sinceRadius = radiusHolds
    this.rejectedBefore = true
    this.taken = false
    this.days = 0
  }

  /** The error of the step allows a longer or asks for a shorter one. */
  judge(error: number): void {
    if (error > 1 && !this.shortest) {
      this.reject(paceOf(error))
      return
    }
    this.taken = true
    this.rejectedBefore = false
    this.statistics.steps++
    if (this.limit) this.statistics.limited++
    this.sinceRadius++
    const proposal = this.days * Math.max(0.2, paceOf(error))
    // A step before an event may be short for that reason alone: do not learn from it.
    this.step = this.days < this.step && proposal > this.days ? Math.max(proposal, this.step) : proposal
    this.firstSteps.took(this.step)
  }

  move(): void {
    if (this.taken) this.day = this.end
  }
}
