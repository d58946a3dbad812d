import { useState } from 'preact/hooks'
import { countText } from '../../ways/counts.ts'
import type { Listed } from './protocol.ts'

interface ShownInPartsOf<Item> {
  readonly of: Listed<Item>
  readonly label: string
  readonly children: (item: Item, at: number) => preact.ComponentChildren
}

/** In sight at first, and more at a time. */
const some = 12
const more = 100

/** A list of which the first are in sight, and all the others behind one key. */
export function ShownInParts<Item>({ of: { first, all }, label, children }: ShownInPartsOf<Item>) {
  const [shown, setShown] = useState(some)
  return (
    <>
      <ul class="cells" aria-label={label}>
        {first.slice(0, shown).map(children)}
      </ul>
      {shown < first.length && (
        <button type="button" class="key" onClick={() => setShown(shown + more)}>
          Show more of all {countText(all)}
        </button>
      )}
      {shown >= first.length && all > first.length && (
        <p class="quiet">
          {countText(all - first.length)} more are not shown on this page; on a terminal{' '}
          <code>holdfast import FILE --preview</code> lists every one.
        </p>
      )}
    </>
  )
}
