import { usualSettings } from '@holdfast/ecosystem'
import { alone } from '@holdfast/ecosystem/testing/alone'
import type { Check } from '../check.ts'
import { type StiffProblem, stiffProblems } from './problems.ts'

/** A method without a Jacobian pays for stiffness in evaluations: more of them than this and it is given up. */
const mostEvaluations = 1e6

class TooLong extends Error {}

/**
 * Our integrator on published stiff problems, far stiffer than a tank: that it ends where they end says that it
 * is right and stable; what it costs says for what it is not made.
 */
export function onStiffProblems(): readonly Check[] {
  return stiffProblems.map((problem): Check => {
    const name = `stiff problem ${problem.name}`
    const results = [1e-4, 1e-5, 1e-6].map((tolerance) => ended(problem, tolerance))
    const last = results[results.length - 1]
    const holds = last.off !== undefined && last.off <= problem.allowed
    const says = results
      .map(({ tolerance, off, evaluations }) =>
        off === undefined
          ? `at ${tolerance} given up after ${evaluations} evaluations`
          : `at ${tolerance} ${off.toExponential(1)} off after ${evaluations} evaluations`,
      )
      .join('; ')
    return { name, outcome: holds ? 'passed' : 'failed', says: `${says}; allowed ${problem.allowed}` }
  })
}

interface Ended {
  readonly tolerance: number
  /** Largest relative distance from the published end; undefined where the run was given up. */
  readonly off?: number
  readonly evaluations: number
}

function ended({ equations, start, until, end }: StiffProblem, tolerance: number): Ended {
  let evaluations = 0
  const counted = {
    ...equations,
    rates: (y: Float64Array, out: Float64Array) => {
      evaluations++
      // Both members of a pair are worked out, of which one runs.
      if (evaluations > 2 * mostEvaluations) throw new TooLong()
      equations.rates(y, out)
    },
  }
  let states: Float64Array = Float64Array.from(start)
  let used = 0
  try {
    // The first instants by themselves: at the start nothing tells how fast these become.
    for (const [from, to, longest] of [
      [0, until / 1e4, until / 1e7],
      [until / 1e4, until, until],
    ]) {
      const run = alone(counted, states, { ...usualSettings, tolerance, longest, shortest: 1e-12 })
      run.run(from, to)
      states = run.states()
      used += run.statistics.evaluations
    }
  } catch (error) {
    if (error instanceof TooLong) return { tolerance, evaluations: Math.round(evaluations / 2) }
    throw error
  }
  const off = Math.max(...end.map((value, i) => Math.abs(states[i] / value - 1)))
  return { tolerance, off, evaluations: used }
}
