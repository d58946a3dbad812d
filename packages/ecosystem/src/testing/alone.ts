import {
  type Equations,
  foreignKernel,
  Integrator,
  type IntegratorSettings,
  type Lane,
  type Statistics,
} from '../integrate/index.ts'

/** One member of equations that are no model's, stepped by itself. */
export function alone(
  equations: Equations,
  start: Float64Array,
  settings?: IntegratorSettings,
): {
  readonly run: (from: number, to: number, onStep?: (lane: Lane) => void) => void
  readonly states: () => Float64Array
  readonly statistics: Statistics
} {
  const kernel = foreignKernel(equations)
  const { memory } = kernel
  memory.set(memory.at.start, 0, start)
  const integrator = new Integrator(kernel, false, settings)
  const [lane] = integrator.lanes
  return {
    run: (from, to, onStep) =>
      integrator.run(from, to, 1, { begin: nothing, short: nothing, long: () => onStep?.(lane) }),
    states: () => memory.get(memory.at.start, 0),
    statistics: lane.statistics,
  }
}

const nothing = (): void => undefined
