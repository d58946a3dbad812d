import type { ComputedFigure } from '../../figure/computed.ts'
import { Figure } from '../../figure/figure.tsx'
import { Line } from '../../figure/line.tsx'
import type { LedgerGround } from './derivations.ts'
import { basinFigure, streamFigure } from './figures.ts'
import type { River } from './streams.ts'

/** The figures of a river, in the order in which its streams stand. */
export function RiverLegend({ river, ground }: { readonly river: River; readonly ground: LedgerGround }) {
  const named = (
    items: readonly { readonly place: { readonly title: string }; readonly amount_umol: number }[],
    figures: readonly ComputedFigure[],
  ) => items.map((item, i) => ({ title: item.place.title, figure: figures[i], none: item.amount_umol === 0 }))
  const groups = [
    {
      heading: 'Comes in',
      rows: named(
        river.sources,
        river.sources.map((stream) => streamFigure(stream, river, ground)),
      ),
    },
    {
      heading: 'Gained, or lost with a minus',
      rows: named(
        river.basins,
        river.basins.map((basin) => basinFigure(basin, river, ground)),
      ),
    },
    {
      heading: 'Leaves',
      rows: named(
        river.exports,
        river.exports.map((stream) => streamFigure(stream, river, ground)),
      ),
    },
  ]
  return (
    <div class="legend">
      {groups.map((group) => (
        <div key={group.heading}>
          <h4>{group.heading}</h4>
          {group.rows.map(({ title, figure, none }) =>
            none || !figure ? null : (
              <Line key={title} figures={[figure]} className="entry">
                <span>{title}</span> <Figure of={figure} />
              </Line>
            ),
          )}
          {group.rows.some((row) => row.none) && (
            <p class="quiet">
              None:{' '}
              {group.rows
                .filter((row) => row.none)
                .map((row) => row.title.toLowerCase())
                .join(', ')}
              .
            </p>
          )}
        </div>
      ))}
    </div>
  )
}
