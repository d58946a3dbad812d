import { type MethodRun, type Methods, methodsInC } from '@holdfast/ecosystem/build/methods/run-methods'
import type { Check } from '../check.ts'
import { stiffProblems } from './problems.ts'

/**
 * Methods that were weighed against the shipped one, with the order that their authors claim, and the problems whose
 * end they are known not to meet: van der Pol's has signs that Patankar's cannot take, and HIRES begins where most
 * states are nothing, which sets Patankar's wrong.
 */
const candidates: readonly (readonly [method: string, order: number, misses: readonly string[]])[] = [
  ['RKC2', 2, []],
  ['ROCK2', 2, []],
  ['RODAS3', 3, []],
  ['ROS34PW2', 3, []],
  ['MPRK22', 2, ['HIRES', 'van der Pol, 1e-6']],
]

/**
 * The order of the methods that `npm run bench -- integrators` compares, and what they make of the published stiff
 * problems: a candidate that is coded wrongly would lose for the wrong reason.
 */
export function otherMethods(): readonly Check[] {
  const methods = methodsInC()
  if ('missing' in methods) return [{ name: 'other methods', outcome: 'skipped', says: methods.missing }]
  const checks = candidates.flatMap(([method, order, misses]) => [
    orderOf(methods, method, order),
    onStiff(methods, method, misses),
  ])
  methods.remove()
  return checks
}

const somewhere = '0.7,0.2,0.1,0.1,0.3,0.1,0.003,0.002'

/** Error against a strict run as steps are halved, on HIRES from a state in which nothing is zero. */
function orderOf({ run }: Methods, method: string, claimed: number): Check {
  const ended = (name: string, step: number, tolerance: number): Float64Array =>
    run([name, tolerance, step, 'HIRES', 2, somewhere, Array(8).fill(1e-3).join()]).samples[0]
  const truth = ended('RODAS3', 0, 1e-11)
  const off = (step: number): number =>
    Math.max(...ended(method, step, 1e-3).map((value, i) => Math.abs(value - truth[i])))
  const measured = Math.log2(off(0.01) / off(0.005))
  const holds = Math.abs(measured - claimed) < 0.35
  return {
    name: `order of ${method}`,
    outcome: holds ? 'passed' : 'failed',
    says: `${measured.toFixed(2)} measured, ${claimed} claimed; ${off(0.005).toExponential(1)} off at steps of 0.005`,
  }
}

/** Evaluations until a published end is met to a thousandth. */
function onStiff({ run }: Methods, method: string, misses: readonly string[]): Check {
  const reports = stiffProblems.map(({ name, start, until, end, equations: { tolerance } }) => {
    for (const relative of [1e-3, 1e-4, 1e-5, 1e-6, 1e-7]) {
      let came: MethodRun
      try {
        came = run([method, relative, 0, name, until, start.join(), [...tolerance].join()])
      } catch {
        break
      }
      const off = Math.max(...end.map((value, i) => Math.abs(came.samples[0][i] / value - 1)))
      if (off < 1e-3) return { holds: !misses.includes(name), says: `${name} ${came.evaluations}` }
    }
    return { holds: misses.includes(name), says: `${name} not met` }
  })
  return {
    name: `evaluations of ${method} on stiff problems, ends within 0.1 %`,
    outcome: reports.every(({ holds }) => holds) ? 'passed' : 'failed',
    says: reports.map(({ says }) => says).join('; '),
  }
}
