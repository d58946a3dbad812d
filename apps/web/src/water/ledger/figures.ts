import type { Summed } from '@holdfast/inference/summed'
import { asMilligrams } from '../../figure/atoms.ts'
import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { plain } from '../../figure/numbers.ts'
import type { BandedRow } from '../../worker/answers.ts'
import {
  derivationOfBasin,
  derivationOfRows,
  type LedgerGround,
  milligrams,
  rowTitle,
} from './derivations.ts'
import type { Basin, River, Stream } from './streams.ts'

export function streamFigure(stream: Stream, river: River, ground: LedgerGround): ComputedFigure {
  const named = { id: `stream.${river.atom}.${stream.place.account}`, name: stream.place.title }
  return inMilligrams(named, stream, river, () => derivationOfRows(stream.rows, stream, river, ground))
}

export function basinFigure(basin: Basin, river: River, ground: LedgerGround): ComputedFigure {
  const named = {
    id: `basin.${river.atom}.${basin.place.account}`,
    name: `Change in ${basin.place.title.toLowerCase()}`,
  }
  return inMilligrams(named, basin, river, () => derivationOfBasin(basin, river, ground))
}

export function rowFigure(row: BandedRow, river: River, ground: LedgerGround): ComputedFigure {
  const { atom, process, instance, from, to } = row
  const named = { id: ['row', atom, process, instance, from, to].join('.'), name: rowTitle(row, ground) }
  return inMilligrams(named, row, river, () => derivationOfRows([row], row, river, ground))
}

/** Some rows as a share of what was fed, per cent. */
export function shareFigure(
  amount: Summed,
  river: River,
  named: Named,
  ground: LedgerGround,
  rows: readonly BandedRow[],
): ComputedFigure {
  const per = (umols: number) => (100 * umols) / river.fed_umol
  return {
    ...named,
    value: per(amount.amount_umol),
    low: per(amount.low_umol),
    high: per(amount.high_umol),
    unit: '%',
    derivation: () => {
      const below = derivationOfRows(rows, amount, river, ground)
      const share = {
        formula: 'share = amount ÷ what was fed',
        withValues: `${plain(per(amount.amount_umol))} % = ${milligrams(amount.amount_umol, river)} ÷ ${milligrams(river.fed_umol, river)}`,
      }
      return { ...below, steps: [...below.steps, share] }
    },
  }
}

type Named = Pick<ComputedFigure, 'id' | 'name'>

function inMilligrams(
  named: Named,
  amount: Summed,
  { atom }: River,
  derivation: () => Derivation,
): ComputedFigure {
  return {
    ...named,
    value: asMilligrams(amount.amount_umol, atom),
    low: asMilligrams(amount.low_umol, atom),
    high: asMilligrams(amount.high_umol, atom),
    unit: `mg ${atom}`,
    derivation,
  }
}
