import { useState } from 'preact/hooks'
import { addressOf } from '../shell/address.ts'
import { countText } from '../ways/counts.ts'
import { useEntries } from './entries.ts'
import { headings, whenOf } from './in-words.ts'

/** A long log is shown from its newest entries on, and so many more at each press. */
export const shownEntries = 8
const more = 50

/** The entries that a figure rests on, each a way to its line in the record. */
export function EntriesBehind({ ids }: { readonly ids: readonly string[] }) {
  const [count, setCount] = useState(shownEntries)
  const { entries, trouble } = useEntries(ids.slice(-count))
  if (ids.length === 0) return <p class="quiet">{headings.noEntries}</p>
  const earlier = Math.max(0, ids.length - count)
  return (
    <>
      <h4>{headings.entries}</h4>
      {trouble && <p class="issue">{trouble}</p>}
      {entries === undefined && !trouble && <p class="quiet">They are being fetched from your log.</p>}
      <ul class="entries">
        {entries?.map((entry) => (
          <li key={entry.id}>
            <a href={addressOf('record', undefined, { entry: entry.id })}>
              <span class="number">{whenOf(entry)}</span> {entry.text}
            </a>
          </li>
        ))}
      </ul>
      {earlier > 0 && (
        <button type="button" class="key" onClick={() => setCount(count + more)}>
          Show {Math.min(more, earlier)} of {countText(earlier)} earlier ones
        </button>
      )}
    </>
  )
}
