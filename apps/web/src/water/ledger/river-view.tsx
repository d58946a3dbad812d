import { atomNames } from '../../figure/atoms.ts'
import { Says } from '../../figure/says.tsx'
import type { Sentence } from '../../figure/sentence.ts'
import type { LedgerGround } from './derivations.ts'
import { basinFigure, shareFigure, streamFigure } from './figures.ts'
import { RiverLegend } from './legend.tsx'
import { RiverPicture } from './picture.tsx'
import type { RiverDrawing } from './rivers.ts'
import type { River } from './streams.ts'
import { type Spot, walked } from './walk.ts'
import { riverSentence } from './words.ts'

export interface RiverViewOf {
  readonly river: River
  readonly drawing: RiverDrawing
  readonly ground: LedgerGround
  /** The stream one looks at, in both pictures alike. */
  readonly spot: Spot | undefined
  readonly onSpot: (spot: Spot) => void
  readonly onTable: () => void
  /** How to point at a stream, while nobody does. */
  readonly hint: string
}

/** One river: picture, what the stream one points at carries, and all of it as a list. */
export function RiverView({ river, drawing, ground, spot, onSpot, onTable, hint }: RiverViewOf) {
  return (
    <figure>
      <h3>{atomNames[river.atom]}</h3>
      <div
        class="walkable"
        role="group"
        // The picture is walked with arrow keys, so it must take the focus.
        tabIndex={0}
        aria-label={`${atomNames[river.atom]}: arrow keys go from stream to stream, T shows the table`}
        onKeyDown={(event) => {
          if (event.ctrlKey || event.metaKey || event.altKey) return
          const next = walked(drawing, spot, event.key)
          if (next) onSpot(next)
          else if (event.key === 't') onTable()
          else return
          event.preventDefault()
        }}
      >
        <RiverPicture
          river={river}
          drawing={drawing}
          label={riverSentence(river, ground)}
          spot={spot}
          onSpot={onSpot}
        />
      </div>
      <div class="readout" aria-live="polite">
        {spot ? (
          <Says sentence={atSpot(spot, river, ground)} />
        ) : (
          <p class="line quiet how-to-walk">{hint}</p>
        )}
      </div>
      <RiverLegend river={river} ground={ground} />
    </figure>
  )
}

/** "Skimmate: 1000 (100 to 3000) mg N, 5 (0 to 14) % of what you fed." */
function atSpot({ side, account }: Spot, river: River, ground: LedgerGround): Sentence {
  if (side === 'basin') {
    const basin = river.basins.find(({ place }) => place.account === account)
    return basin
      ? [`Change in ${basin.place.title.toLowerCase()}: `, basinFigure(basin, river, ground), '.']
      : []
  }
  const stream = (side === 'source' ? river.sources : river.exports).find(
    ({ place }) => place.account === account,
  )
  if (!stream) return []
  const { title } = stream.place
  if (stream.amount_umol === 0) return [`${title}: none.`]
  const named = {
    id: `share.${river.atom}.${side}.${account}`,
    name: `${title}, as a share of what you fed`,
  }
  return [
    `${title}: `,
    streamFigure(stream, river, ground),
    ', ',
    shareFigure(stream, river, named, ground, stream.rows),
    ' of what you fed.',
  ]
}
