import { atomNames } from '../../figure/atoms.ts'
import { Figure } from '../../figure/figure.tsx'
import { TableLine } from '../../figure/line.tsx'
import { type LedgerGround, rowTitle, titleOf } from './derivations.ts'
import { basinFigure, rowFigure } from './figures.ts'
import type { River } from './streams.ts'

/** Every row of the ledger, also those inside the system that the rivers leave out, and what each part holds more or less. */
export function LedgerTable({
  rivers,
  ground,
}: {
  readonly rivers: readonly River[]
  readonly ground: LedgerGround
}) {
  return (
    <>
      {rivers.map((river) => (
        <div
          class="scrolls"
          key={river.atom}
          tabIndex={0}
          role="region"
          aria-label={`Ledger of ${atomNames[river.atom]}, table`}
        >
          <table class="ledger">
            <caption>Ledger of {atomNames[river.atom]}</caption>
            <thead>
              <tr>
                <th scope="col">What moved it</th>
                <th scope="col">From</th>
                <th scope="col">To</th>
                <th scope="col">Amount over the span (interval)</th>
              </tr>
            </thead>
            <tbody>
              {ground.answer.ledger.rows
                .filter((row) => row.atom === river.atom)
                .map((row) => [row, rowFigure(row, river, ground)] as const)
                .map(([row, figure]) => (
                  <TableLine key={figure.id} figures={[figure]} columns={4}>
                    <th scope="row">{rowTitle(row, ground)}</th>
                    <td>{titleOf(row.from, ground)}</td>
                    <td>{titleOf(row.to, ground)}</td>
                    <td>
                      <Figure of={figure} />
                    </td>
                  </TableLine>
                ))}
              {river.basins
                .map((basin) => [basin, basinFigure(basin, river, ground)] as const)
                .map(([basin, figure]) => (
                  <TableLine key={figure.id} figures={[figure]} columns={4}>
                    <th scope="row">Change in {basin.place.title.toLowerCase()}</th>
                    <td colSpan={2} class="quiet">
                      {basin.balances.map((balance) => titleOf(balance.account, ground)).join(', ')}
                    </td>
                    <td>
                      <Figure of={figure} />
                    </td>
                  </TableLine>
                ))}
            </tbody>
          </table>
        </div>
      ))}
    </>
  )
}
