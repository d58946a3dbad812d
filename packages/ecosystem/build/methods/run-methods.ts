import { compileC, type Missing } from '../cvode/compile-c.ts'
import chebyshev from './chebyshev.h?raw'
import source from './methods.c?raw'
import patankar from './patankar.h?raw'
import rosenbrock from './rosenbrock.h?raw'
import sparse from './sparse.h?raw'
import steps from './steps.h?raw'
import stiff from './stiff.h?raw'

export interface MethodRun {
  /** s of the processor for one run. */
  readonly seconds: number
  readonly steps: number
  readonly rejected: number
  readonly evaluations: number
  readonly factorizations: number
  /** States at each sample, or at the end. */
  readonly samples: readonly Float64Array[]
}

export interface Methods {
  /** @throws where the method gave up */
  readonly run: (words: readonly (string | number)[]) => MethodRun
  readonly remove: () => void
}

/**
 * The integrators that the shipped one is measured against, in C.
 *
 * @param equations  a model's equations in C; without, the published stiff problems
 */
export function methodsInC(equations?: Readonly<Record<string, string>>): Methods | Missing {
  const headers = {
    'chebyshev.h': chebyshev,
    'patankar.h': patankar,
    'rosenbrock.h': rosenbrock,
    'sparse.h': sparse,
    'steps.h': steps,
    'stiff.h': stiff,
  }
  const program = compileC({ 'methods.c': source, ...headers, ...equations }, [
    ...(equations ? ['-DMODEL'] : []),
    '-lklu',
    '-lm',
  ])
  if ('missing' in program) return program
  return {
    run: (words) => {
      const [head, ...rows] = program.run(words.map(String))
      const [seconds, taken, rejected, evaluations, , factorizations] = head.map(Number)
      const samples = rows.map((row) => Float64Array.from(row, Number))
      return { seconds, steps: taken, rejected, evaluations, factorizations, samples }
    },
    remove: program.remove,
  }
}
