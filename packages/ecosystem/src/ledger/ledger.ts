import { type Flux, type Model, stateId } from '../assemble/model.ts'
import type { Ledger, LedgerRow } from '../ledger-types.ts'
import type { Mark } from '../simulate/index.ts'

/**
 * The books between two marks of a run: the same flows that moved the states, summed. Nothing is
 * worked out a second time.
 */
export function ledger(model: Model, start: Mark, end: Mark): Ledger {
  const rows = [
    ...rowsOf(model, model.fluxes, start.flows, end.flows),
    ...rowsOf(model, model.eventFluxes, start.eventFlows, end.eventFlows),
  ]
  return {
    from: start.day,
    to: end.day,
    rows: rows.filter(({ amount_umol }) => amount_umol !== 0),
    balances: model.states.flatMap((entry, i) =>
      entry.kind === 'atoms'
        ? [
            {
              account: entry.account.id,
              atom: entry.atom,
              start_umol: start.states[i],
              end_umol: end.states[i],
            },
          ]
        : [],
    ),
    notModelled: model.notModelled,
  }
}

function rowsOf(
  model: Model,
  fluxes: readonly Flux[],
  before: Float64Array,
  after: Float64Array,
): readonly LedgerRow[] {
  return fluxes.flatMap((flux, k): readonly LedgerRow[] => {
    if (flux.atom === null) return []
    return [
      {
        process: flux.process.id,
        instance: flux.instance,
        atom: flux.atom,
        from: accountAt(model, flux.from),
        to: accountAt(model, flux.to),
        amount_umol: after[k] - before[k],
      },
    ]
  })
}

const accountAt = (model: Model, index: number): string => stateId(model.states[index]).split('/')[0] ?? ''
