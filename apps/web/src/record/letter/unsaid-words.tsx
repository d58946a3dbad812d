import { blanksOf } from './blanks-of.ts'
import { textAt, unsaidOf } from './letter.ts'
import type { Letter } from './paragraph.ts'

/** How much of the letter nobody has said, and what follows from it. */
export function UnsaidWords({ letter }: { readonly letter: Letter }) {
  const [open, all] = [unsaidOf(letter).length, blanksOf(letter).length]
  const empty = blanksOf(letter).filter((blank) => textAt(letter, blank) === '').length
  if (open === 0)
    return (
      <p class="line quiet">
        {empty === 0
          ? 'Every blank of this letter was said.'
          : `${empty === 1 ? 'One blank of this letter is' : `${empty} blanks of this letter are`} empty and counted as unknown; all others were said.`}
      </p>
    )
  return (
    <p class="line quiet" role="status">
      {open} of {all} blanks are as the letter began. They count as unknown. A ration among them the model
      takes in a wide band, since most hangs on it; the others it takes as usual.
    </p>
  )
}
