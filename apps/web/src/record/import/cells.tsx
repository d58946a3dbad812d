import { counted, countText } from '../../ways/counts.ts'
import { dayInShort } from '../../ways/dates.ts'
import { capital, quantityInWords } from './in-words.ts'
import type { Preview, Settled } from './protocol.ts'
import { ShownInParts } from './shown-in-parts.tsx'

interface OddOf {
  readonly preview: Preview
  readonly settled: Settled
  readonly onSettle: (change: Partial<Settled>) => void
}

/** Every cell that is no plain reading: as written, why, and what became of it. */
export function Odd({ preview: { odd, takenOdd }, settled: { leftOut }, onSettle }: OddOf) {
  if (odd.all === 0) return null
  return (
    <section aria-labelledby="odd-title">
      <h3 id="odd-title">What is odd</h3>
      <p class="lead">
        {capital(counted(odd.all, 'cell'))} to look at. Nothing else in the sheet was passed over.
      </p>
      <ShownInParts of={odd} label="Odd cells">
        {({ cell, asWritten, why, taken, likely }, at) => {
          const isOut = leftOut.includes(cell)
          return (
            <li key={`${cell} ${at}`}>
              <span class="cell number">{cell}</span>
              <span>
                “{asWritten}”: {why}. <em>{isOut ? 'Left out, as you say' : capital(taken)}</em>
                {likely && !isOut && `; likely ${likely}`}.
              </span>
              {takenOdd.includes(cell) && (
                <button
                  type="button"
                  class="key"
                  onClick={() =>
                    onSettle({
                      leftOut: isOut ? leftOut.filter((one) => one !== cell) : [...leftOut, cell],
                    })
                  }
                >
                  {isOut ? 'Take it after all' : 'Leave it out'}
                  <span class="spoken">: {cell}</span>
                </button>
              )}
            </li>
          )
        }}
      </ShownInParts>
    </section>
  )
}

/** Notes of the sheet, and what else is made of them. */
export function Notes({ preview: { notes } }: { readonly preview: Preview }) {
  if (notes.all === 0) return null
  return (
    <section aria-labelledby="notes-title">
      <h3 id="notes-title">Notes, and what happened</h3>
      <ShownInParts of={notes} label="Notes">
        {({ cell, date, text, tank, stored, notStored }, at) => (
          <li key={`${cell} ${at}`}>
            <span class="cell number">{cell}</span>
            <span>
              {dayInShort(date)}
              {tank && `, ${tank}`}: “{text}”
              {stored.length > 0 && <em class="made">Stored beside the note: {stored.join('; ')}.</em>}
              {notStored.length > 0 && <em class="made">Only in the note: {notStored.join('; ')}.</em>}
            </span>
          </li>
        )}
      </ShownInParts>
    </section>
  )
}

/** Where more than this share of what is in the log already differs, an answer is likelier than many mends. */
const muchOfIt = 0.1

/** Cells that were mended since an earlier import. */
export function MendedCells({ preview: { mended, already } }: { readonly preview: Preview }) {
  if (mended.all === 0) return null
  const isMuch = mended.all >= 5 && mended.all / (mended.all + already) > muchOfIt
  return (
    <section aria-labelledby="mended-title">
      <h3 id="mended-title">Was, and is now</h3>
      <p class={isMuch ? 'caution' : 'lead'}>
        {isMuch &&
          `Much of this sheet differs from what an earlier import left: ${countText(mended.all)} of ${countText(mended.all + already)} values. Was a question answered otherwise then, or is this the sheet of another tank? `}
        Each new value is stored as a correction of the old one; both stay in the log.
      </p>
      <ShownInParts of={mended} label="Mended cells">
        {({ cell, date, quantity, was, now }, at) => (
          <li key={`${cell} ${at}`}>
            <span class="cell number">{cell}</span>
            <span>
              {quantityInWords(quantity)}, {dayInShort(date)}: <s>{was}</s> <span class="spoken">now </span>
              {now}
            </span>
          </li>
        )}
      </ShownInParts>
    </section>
  )
}
