import { pow } from '@holdfast/elementary'
import type { IntegratorSettings, Statistics } from './settings.ts'

/** Accepted steps after which the fastest decay is looked for again. */
const radiusHolds = 25

/**
 * One member's own way through time: its day, its step, its stages. Two members share the arithmetic and
 * nothing else, so that each has the bits that it would have alone.
 */
export class Lane {
  readonly statistics: Statistics = { steps: 0, rejected: 0, limited: 0, evaluations: 0 }
  day = Number.POSITIVE_INFINITY
  /** The step that is tried: where it ends and how long it is; 0 days where the member waits. */
  end = 0
  days = 0
  stages = 0
  taken = false
  /** What leaves some account has to be scaled in this step. */
  limit = false
  /** Fastest decay, per day. */
  fastest = 0
  private step = 0.02
  private sinceRadius = radiusHolds

  constructor(private readonly settings: IntegratorSettings) {}

  /** Sets out from a day on which something may have changed. */
  begin(day: number): void {
    this.day = day
    this.sinceRadius = radiusHolds
  }

  /** The next step towards a day. */
  plan(to: number): void {
    const left = to - this.day
    this.taken = false
    this.limit = false
    if (!(left > 0)) {
      this.days = 0
      this.stages = 0
      return
    }
    const { shortest, longest } = this.settings
    const step = Math.max(shortest, Math.min(this.step, longest))
    // Two halves rather than a whole and a crumb.
    this.days = step >= left ? left : step > left / 2 ? left / 2 : step
    this.end = this.days === left ? to : this.day + this.days
  }

  get waits(): boolean {
    return this.days === 0
  }
  get wantsRadius(): boolean {
    return !this.waits && this.sinceRadius >= radiusHolds
  }
  get shortest(): boolean {
    return this.days <= this.settings.shortest
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

  reject(factor: number): void {
    this.statistics.rejected++
    this.step = Math.max(this.days * factor, this.settings.shortest)
    this.sinceRadius = radiusHolds
    this.taken = false
  }

  accept(error: number): void {
    this.taken = true
    this.statistics.steps++
    if (this.limit) this.statistics.limited++
    this.sinceRadius++
    const grow = error > 0 ? 0.8 * pow(error, -1 / 3) : 5
    const proposal = this.days * Math.max(0.2, Math.min(5, grow))
    // The last step before an event may be short for that reason alone: do not learn from it.
    this.step = this.days < this.step && proposal > this.days ? Math.max(proposal, this.step) : proposal
  }

  /** The error of the step allows a longer or asks for a shorter one. */
  judge(error: number): void {
    if (error > 1 && !this.shortest) this.reject(Math.max(0.1, 0.8 * pow(error, -1 / 3)))
    else this.accept(error)
  }

  move(): void {
    if (this.taken) this.day = this.end
  }
}
