import { pow } from '@holdfast/elementary'
import { coefficients, stagesFor } from './chebyshev.ts'
import { type Equations, scatter } from './equations.ts'
import { limit, limiterWork } from './limiter.ts'
import { radiusWork, spectralRadius } from './spectral-radius.ts'

export interface Statistics {
  steps: number
  rejected: number
  /** Steps in which an outflow had to be scaled to keep an account from falling below zero. */
  limited: number
  evaluations: number
}

export interface IntegratorSettings {
  /** Relative tolerance of a step; absolute ones go with it, in proportion to the usual. */
  readonly tolerance: number
  /** Longest and shortest step, days. */
  readonly longest: number
  readonly shortest: number
}

export const usualSettings: IntegratorSettings = { tolerance: 1e-3, longest: 7, shortest: 1e-6 }

/** A stretch between two states, for what lies between. */
export interface Step {
  readonly from: number
  readonly to: number
  readonly before: Float64Array
  readonly after: Float64Array
  readonly slopeBefore: Float64Array
  readonly slopeAfter: Float64Array
  /** Whole flows of the step; rates of flows at both ends; sums of flows up to its start. */
  readonly flows: Float64Array
  readonly ratesBefore: Float64Array
  readonly ratesAfter: Float64Array
  readonly totals: Float64Array
}

/** A state became no number: an input was none, or a formula divided nothing by nothing. */
export class NotANumber extends Error {
  override readonly name = 'NotANumber'
  /** Indexes of the states that are no numbers; empty where only a rate is none. */
  readonly states: readonly number[]

  constructor(states: Float64Array) {
    const none = [...states.keys()].filter((i) => Number.isNaN(states[i]))
    super(`States ${none.join(', ')} are no numbers. Look at start, settings and parameters of the run.`)
    this.states = none
  }
}

/** Fewest stages are cheap, many stages are a sign that the step should be shorter. */
const mostStages = 250
/** Accepted steps after which the fastest decay is looked for again. */
const radiusHolds = 25

/**
 * Advances the states of one model through time, from event to event.
 *
 * The method is explicit and stabilised (chebyshev.ts): mildly stiff equations need no Jacobian. A step
 * ends by whole flows, the weighted sum of the rates of all stages: they alone are added to the states, so
 * that conservation holds by construction and the ledger is the sum of the very flows that moved the states.
 */
export class Integrator {
  readonly statistics: Statistics = { steps: 0, rejected: 0, limited: 0, evaluations: 0 }
  /** Sum of all flows so far; the ledger. */
  readonly totals: Float64Array
  /** Whole flows of the step that is tried. */
  private readonly flows: Float64Array
  private readonly rate0: Float64Array
  private readonly rateJ: Float64Array
  /** Changes of the states since the start of the step, at three stages in turn. */
  private readonly changes: readonly [Float64Array, Float64Array, Float64Array]
  private readonly stage: Float64Array
  private readonly next: Float64Array
  private readonly slope0: Float64Array
  private readonly slope1: Float64Array
  private readonly weight: Float64Array
  private readonly limiter
  private readonly radius
  private step = 0.02
  private fastest = 0
  private sinceRadius = radiusHolds

  constructor(
    private readonly equations: Equations,
    readonly y: Float64Array,
    private readonly settings: IntegratorSettings = usualSettings,
  ) {
    const { states, fluxes } = equations
    const overFluxes = (): Float64Array => new Float64Array(fluxes)
    const overStates = (): Float64Array => new Float64Array(states)
    this.totals = overFluxes()
    this.flows = overFluxes()
    this.rate0 = overFluxes()
    this.rateJ = overFluxes()
    this.changes = [overStates(), overStates(), overStates()]
    this.stage = overStates()
    this.next = overStates()
    this.slope0 = overStates()
    this.slope1 = overStates()
    this.weight = overStates()
    this.limiter = limiterWork(states)
    this.radius = radiusWork(equations)
  }

  /**
   * Runs from one day to another; no event lies between.
   *
   * @param onStep is told of every accepted step; what it gets is overwritten by the next
   * @throws NotANumber where a rate or a state is none; no error control can see that
   */
  run(from: number, to: number, onStep?: (step: Step) => void): void {
    let day = from
    this.slopes(this.y, this.rate0, this.slope0)
    this.sinceRadius = radiusHolds
    while (day < to) {
      const left = to - day
      let step = Math.max(this.settings.shortest, Math.min(this.step, this.settings.longest))
      // Two halves rather than a whole and a crumb.
      if (step >= left) step = left
      else if (step > left / 2) step = left / 2
      const [taken, error] = this.attempt(step)
      if (!taken) continue
      const end = step === left ? to : day + step
      onStep?.({
        from: day,
        to: end,
        before: this.y,
        after: this.next,
        slopeBefore: this.slope0,
        slopeAfter: this.slope1,
        flows: this.flows,
        ratesBefore: this.rate0,
        ratesAfter: this.rateJ,
        totals: this.totals,
      })
      this.y.set(this.next)
      for (let k = 0; k < this.flows.length; k++) this.totals[k] += this.flows[k]
      this.rate0.set(this.rateJ)
      this.slope0.set(this.slope1)
      day = end
      const grow = error > 0 ? 0.8 * pow(error, -1 / 3) : 5
      // The last step before an event may be short for that reason alone: do not learn from it.
      const proposal = step * Math.max(0.2, Math.min(5, grow))
      this.step = step < this.step && proposal > step ? Math.max(proposal, this.step) : proposal
    }
  }

  /** Tries one step; leaves the new states in `next`, the flows in `flows`, the new rates in `rateJ`. */
  private attempt(step: number): readonly [boolean, number] {
    const { equations, flows, settings, weight, y } = this
    // A run asked to be ten times as true is so for small amounts too.
    const strictness = settings.tolerance / usualSettings.tolerance
    for (let i = 0; i < y.length; i++)
      weight[i] =
        equations.tolerance[i] > 0
          ? equations.tolerance[i] * strictness + settings.tolerance * Math.abs(y[i])
          : 0
    if (this.sinceRadius >= radiusHolds) {
      this.fastest = spectralRadius(equations, y, this.rate0, this.slope0, weight, this.radius)
      this.sinceRadius = 0
    }
    if (!Number.isFinite(this.fastest)) throw new NotANumber(y)
    let stages = stagesFor(step, this.fastest)
    if (stages > mostStages) {
      if (step > settings.shortest) return this.reject(step / 2)
      // A run must end: what is too fast even for the shortest step is left to the limiter.
      stages = mostStages
    }
    this.stages(step, stages)
    this.next.set(y)
    scatter(equations, flows, this.next)
    const lowest = this.deepest()
    if (lowest > 1 && step > settings.shortest) return this.reject(step / 2)
    if (lowest > 0) {
      limit(equations, y, flows, this.limiter)
      this.next.set(y)
      scatter(equations, flows, this.next)
    }
    this.slopes(this.next, this.rateJ, this.slope1)
    const error = this.error(step)
    if (Number.isNaN(error)) throw new NotANumber(this.next)
    if (error > 1 && step > settings.shortest)
      return this.reject(step * Math.max(0.1, 0.8 * pow(error, -1 / 3)))
    this.statistics.steps++
    if (lowest > 0) this.statistics.limited++
    this.sinceRadius++
    return [true, error]
  }

  private reject(step: number): readonly [boolean, number] {
    this.statistics.rejected++
    this.step = Math.max(step, this.settings.shortest)
    this.sinceRadius = radiusHolds
    return [false, 1]
  }

  private stages(step: number, stages: number): void {
    const { flows, rate0, rateJ, slope0, slope1, stage, y } = this
    const c = coefficients(stages)
    let [before, last, now] = this.changes
    const onStart = c.weights[0] * step
    for (let k = 0; k < flows.length; k++) flows[k] = onStart * rate0[k]
    before.fill(0)
    for (let i = 0; i < last.length; i++) last[i] = c.first * step * slope0[i]
    for (let j = 1; j < stages; j++) {
      for (let i = 0; i < stage.length; i++) stage[i] = y[i] + last[i]
      this.slopes(stage, rateJ, slope1)
      const onFlow = c.weights[j] * step
      for (let k = 0; k < flows.length; k++) flows[k] += onFlow * rateJ[k]
      const onLast = c.onLast[j + 1]
      const onBefore = c.onBefore[j + 1]
      const onRate = c.onRate[j + 1] * step
      const onFirstRate = c.onFirstRate[j + 1] * step
      for (let i = 0; i < now.length; i++)
        now[i] = onLast * last[i] + onBefore * before[i] + onRate * slope1[i] + onFirstRate * slope0[i]
      const free = before
      before = last
      last = now
      now = free
    }
  }

  /** How far the new states lie below zero, in tolerances; 0 when none does. */
  private deepest(): number {
    let deepest = 0
    for (let i = 0; i < this.next.length; i++) {
      if (this.equations.floored[i] === 0 || this.next[i] >= 0) continue
      const depth = -this.next[i] / this.equations.tolerance[i]
      if (depth > deepest) deepest = depth
    }
    return deepest
  }

  private error(step: number): number {
    let sum = 0
    let counted = 0
    for (let i = 0; i < this.y.length; i++) {
      if (this.weight[i] === 0) continue
      const estimate = 0.8 * (this.y[i] - this.next[i]) + 0.4 * step * (this.slope0[i] + this.slope1[i])
      sum += (estimate / this.weight[i]) * (estimate / this.weight[i])
      counted++
    }
    return Math.sqrt(sum / counted)
  }

  private slopes(y: Float64Array, rates: Float64Array, slope: Float64Array): void {
    this.equations.rates(y, rates)
    this.statistics.evaluations++
    slope.fill(0)
    scatter(this.equations, rates, slope)
  }
}
