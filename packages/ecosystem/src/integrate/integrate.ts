import { coefficients, stagesFor } from './chebyshev.ts'
import { mostStages } from './coefficient-table.ts'
import type { Kernel } from './kernel.ts'
import { Lane } from './lane.ts'
import { limit, limiterWork } from './limiter.ts'
import { NotANumber } from './not-a-number.ts'
import { Quick } from './quick.ts'
import { type IntegratorSettings, usualSettings } from './settings.ts'
import { FastestDecay } from './spectral-radius.ts'
import type { Watch } from './watch.ts'

const members = [0, 1] as const

/** What was just before a run. */
export interface Before {
  /** Names what has happened: after the like, steps set out as they did the last time. */
  readonly after?: string
  /** Whether slow rates at the start are known from the run before, with what has happened put into them. */
  readonly known?: boolean
}

/**
 * Advances two members of one model through time, from event to event.
 *
 * The method is explicit, stabilised (chebyshev.ts) and multirate: slow processes are worked out at the few
 * stages of a step; between two stages quick processes are stepped by themselves (quick.ts) while the slow
 * ones give evenly what the stages make of them. Every flow is added at both of its ends in the same
 * evaluation, and all states inside go through the same recursion, so that what one account loses another
 * gains. The kernel does the arithmetic on both members at once; each has steps of its own (lane.ts).
 */
export class Integrator {
  readonly lanes: readonly [Lane, Lane]
  private readonly decay: FastestDecay
  private readonly quick: Quick
  private readonly limiter
  /** Relative tolerance, and how much stricter than usual a run is asked to be with small amounts. */
  private readonly strictness: number

  /** @param books  whether single flows are summed: the states have the same bits with books and without */
  constructor(
    readonly kernel: Kernel,
    private readonly books = false,
    private readonly settings: IntegratorSettings = usualSettings,
  ) {
    this.lanes = [new Lane(settings), new Lane(settings)]
    this.strictness = settings.tolerance / usualSettings.tolerance
    this.decay = new FastestDecay(kernel, settings.tolerance, this.strictness)
    this.quick = new Quick(kernel, settings, this.strictness)
    this.limiter = limiterWork(kernel.memory.shape.states)
    kernel.keepBooks(books)
  }

  /**
   * Runs from one day to another; no event lies between.
   *
   * @param count   members that run, 1 or 2
   * @param watch   is told of the steps that some member took, before the states move on
   * @param before  what was just before
   * @throws NotANumber where a rate or a state is none; no error control can see that
   */
  run(
    from: number,
    to: number,
    count: 1 | 2,
    watch?: Watch,
    { after = '', known = false }: Before = {},
  ): void {
    const { lanes, kernel } = this
    this.quick.begin(after)
    kernel.run.begin(known ? 1 : 0)
    for (const member of members) {
      lanes[member].begin(member < count ? from : Number.POSITIVE_INFINITY, after)
      if (member < count && !known) lanes[member].statistics.evaluations++
    }
    for (;;) {
      for (const lane of lanes) lane.plan(to)
      if (lanes[0].waits && lanes[1].waits) return
      this.attempt(watch)
      if (!lanes[0].taken && !lanes[1].taken) continue
      watch?.long(lanes)
      kernel.run.take(lanes[0].taken ? 1 : 0, lanes[1].taken ? 1 : 0)
      for (const lane of lanes) lane.move()
    }
  }

  /** Tries one step of each lane; leaves the new states in the stage, the new rates in the slopes. */
  private attempt(watch?: Watch): void {
    const { kernel, lanes, quick, settings, strictness } = this
    const [one, other] = lanes
    if (one.wantsRadius || other.wantsRadius) this.findRadius()
    for (const member of members) this.choose(member)
    watch?.begin()
    this.step(watch)
    for (const member of members) lanes[member].statistics.quickEvaluations += quick.evaluationsOf(member)
    kernel.run.lowest()
    const [first, second] = kernel.answers()
    if (first < 0 && !one.waits) this.keepAboveZero(0)
    if (second < 0 && !other.waits) this.keepAboveZero(1)
    if (one.limit || other.limit) this.limitFlows()
    if (one.waits && other.waits) return
    kernel.run.error(one.days, other.days, settings.tolerance, strictness)
    const errors = kernel.answers()
    for (const member of members) {
      const lane = lanes[member]
      if (lane.waits) continue
      lane.statistics.evaluations += lane.stages
      if (Number.isNaN(errors[member])) {
        // A step far too long may leave all numbers behind; what is none after the shortest was none before.
        if (lane.shortest) throw new NotANumber(this.states(kernel.memory.at.stage, member))
        lane.reject(0.1)
        continue
      }
      lane.judge(errors[member])
      if (lane.taken) quick.took(member)
    }
  }

  private findRadius(): void {
    const { decay, lanes } = this
    decay.find(
      lanes.map((lane) => lane.wantsRadius),
      (member, fastest, evaluations) => {
        lanes[member].foundRadius(fastest)
        lanes[member].statistics.evaluations += evaluations
      },
    )
  }

  /** The stages of a step, and between them the quick processes by themselves. */
  private step(watch?: Watch): void {
    const { kernel, lanes, quick } = this
    const { run } = kernel
    const [one, other] = lanes
    quick.beginStep()
    const number = Math.max(one.stages, other.stages)
    for (let stage = 1; stage <= number; stage++) {
      const from = [dayOf(one, stage - 1), dayOf(other, stage - 1)] as const
      const to = [dayOf(one, stage), dayOf(other, stage)] as const
      const per0 = perDay(from[0], to[0])
      const per1 = perDay(from[1], to[1])
      if (stage === 1) run.firstStage(one.stages, other.stages, one.days, other.days, per0, per1)
      else run.nextStage(stage, one.stages, other.stages, one.days, other.days, per0, per1)
      quick.walk(from, to, watch)
    }
    run.closeStages()
  }

  /** As many stages as keep the step stable. */
  private choose(member: 0 | 1): void {
    const lane = this.lanes[member]
    if (lane.waits) return
    if (!Number.isFinite(lane.fastest)) throw new NotANumber(this.states(this.kernel.memory.at.start, member))
    lane.stages = stagesFor(lane.days, lane.fastest)
    while (lane.stages > mostStages && !lane.shortest) {
      lane.shorten(lane.days / 2)
      lane.stages = stagesFor(lane.days, lane.fastest)
    }
    // A run must end: what is too fast even for the shortest step is left to the limiter.
    lane.stages = Math.min(lane.stages, mostStages)
  }

  /** A step that takes an account well below zero is tried again at half its length; a hair is left to the limiter. */
  private keepAboveZero(member: 0 | 1): void {
    const lane = this.lanes[member]
    const deepest = this.deepest(member)
    if (deepest > 1 && !lane.shortest) {
      lane.statistics.evaluations += lane.stages - 1
      lane.reject(0.5)
    } else lane.limit = deepest > 0
  }

  /** How far the new states of a member lie below zero, in tolerances; 0 when none does. */
  private deepest(member: 0 | 1): number {
    const { floored, tolerance } = this.kernel.memory.shape
    const next = this.states(this.kernel.memory.at.stage, member)
    let deepest = 0
    for (let i = 0; i < next.length; i++) {
      if (floored[i] === 0 || tolerance[i] === 0 || next[i] >= 0) continue
      const depth = -next[i] / tolerance[i]
      if (depth > deepest) deepest = depth
    }
    return deepest
  }

  /** The step once more with books, and its flows scaled where they take more than is there. */
  private limitFlows(): void {
    const { books, kernel, lanes } = this
    const { memory, run } = kernel
    const [one, other] = lanes
    if (!books)
      kernel.withFlows(() => {
        run.begin(1)
        this.step()
      })
    for (const member of members) {
      if (!lanes[member].limit) continue
      const flows = memory.getFlows(memory.at.wholeFlows, member)
      limit(memory.shape, this.states(memory.at.start, member), flows, this.limiter)
      memory.setFlows(memory.at.wholeFlows, member, flows)
    }
    run.restage(one.limit ? 1 : 0, other.limit ? 1 : 0)
  }

  private states(vector: number, member: number): Float64Array {
    return this.kernel.memory.get(vector, member)
  }
}

/** The day of a stage; of the last for a member that has no more. */
function dayOf({ stages, day, days, end }: Lane, stage: number): number {
  if (stage === 0 || stages === 0) return day
  return stage >= stages ? end : day + days * coefficients(stages).nodes[stage]
}

const perDay = (from: number, to: number): number => (to > from ? 1 / (to - from) : 0)
