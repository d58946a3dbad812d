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
  return inMilligrams(stream.place.title, stream, river, () =>
    derivationOfRows(stream.rows, stream, river, ground),
  )
}

export function basinFigure(basin: Basin, river: River, ground: LedgerGround): ComputedFigure {
  return inMilligrams(`Change in ${basin.place.title.toLowerCase()}`, basin, river, () =>
    derivationOfBasin(basin, river, ground),
  )
}

export function rowFigure(row: BandedRow, river: River, ground: LedgerGround): ComputedFigure {
  return inMilligrams(rowTitle(row, ground), row, river, () => derivationOfRows([row], row, river, ground))
}

/** Some rows as a share of what was fed, per cent. */
export function shareFigure(
  amount: Summed,
  river: River,
  name: string,
  ground: LedgerGround,
  rows: readonly BandedRow[],
): ComputedFigure {
  const per = (umols: number) => (100 * umols) / river.fed_umol
  return {
    name,
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

function inMilligrams(
  name: string,
  amount: Summed,
  { atom }: River,
  derivation: () => Derivation,
): ComputedFigure {
  return {
    name,
    value: asMilligrams(amount.amount_umol, atom),
    low: asMilligrams(amount.low_umol, atom),
    high: asMilligrams(amount.high_umol, atom),
    unit: `mg ${atom}`,
    derivation,
  }
}
