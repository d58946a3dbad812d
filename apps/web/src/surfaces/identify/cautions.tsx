import type { Caution } from '@holdfast/facts'

interface CautionsOf {
  readonly cautions: readonly Caution[]
  /** What comes next needs a hand: then all is said in full. */
  readonly inFull: boolean
}

/** What is minded first, before the look and before what to do. */
export function Cautions({ cautions, inFull }: CautionsOf) {
  if (cautions.length === 0) return null
  return (
    // A note and no landmark, for a page may have several.
    <div class="cautions" role="note" aria-label="Mind first">
      {cautions.map(({ key, title, says }) =>
        inFull ? (
          <p key={key}>
            <b>{title}.</b> {says}
          </p>
        ) : (
          <details key={key}>
            <summary>{title}</summary>
            <p>{says}</p>
          </details>
        ),
      )}
    </div>
  )
}
