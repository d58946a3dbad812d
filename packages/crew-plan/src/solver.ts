import loadHighs from 'highs'
import { lpText } from './lp-text.ts'
import type { Programme } from './programme.ts'

export interface SolverSettings {
  /** The answer may cost this share more than the best there is. */
  readonly gap: number
  readonly seconds: number
  /** Asked now and then; true breaks off. */
  readonly cancelled?: () => boolean
}

export type Solved =
  | {
      readonly status: 'solved'
      readonly cost: number
      readonly values: readonly number[]
      /** True where the gap was proved; false where time ran out with an answer in hand. */
      readonly proved: boolean
    }
  | { readonly status: 'infeasible' | 'no answer in time' | 'cancelled' }

/** Finds the cheapest values of a programme. */
export type Solver = (programme: Programme, settings: SolverSettings) => Solved

/** What HiGHS calls a solution that keeps every limit. */
const feasible = 2

/** The usual gap and patience: a plan within 1 % of the best one. */
export const usualSolving: SolverSettings = { gap: 0.01, seconds: 10 }

/**
 * HiGHS (Huangfu & Hall 2018, Math. Program. Comput. 10:119, doi:10.1007/s12532-017-0130-5, as recalled), compiled
 * to WebAssembly: the same solver in Node and in a worker of the page.
 *
 * @param wasm  address of the compiled module where it does not lie beside the program
 */
export async function loadSolver(wasm?: string): Promise<Solver> {
  const highs = await loadHighs(wasm === undefined ? {} : { locateFile: () => wasm })
  return (programme, { gap, seconds, cancelled }) =>
    highs.withModel({ format: 'lp', data: lpText(programme) }, (model): Solved => {
      model.options.set({
        output_flag: false,
        mip_rel_gap: gap,
        time_limit: seconds,
        random_seed: 1,
        // What a restart finds it had found already: it doubled the time.
        mip_allow_restart: false,
      })
      let stopped = false
      model.run({
        [highs.constants.callbackType.mipInterrupt]: (event) => {
          if (!cancelled?.()) return
          stopped = true
          event.interrupt()
        },
      })
      if (stopped) return { status: 'cancelled' }
      const { modelStatus } = highs.constants
      const status = model.getModelStatus()
      if (status === modelStatus.infeasible) return { status: 'infeasible' }
      if (model.info.get('primal_solution_status') !== feasible) return { status: 'no answer in time' }
      const { colValue } = model.getSolution()
      const values = programme.columns.map(({ whole }, c) => (whole ? Math.round(colValue[c]) : colValue[c]))
      return {
        status: 'solved',
        cost: model.getObjectiveValue(),
        values,
        proved: status === modelStatus.optimal,
      }
    })
}
