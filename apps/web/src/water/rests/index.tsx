import { useMemo } from 'preact/hooks'
import { useEntries } from '../../figure/entries.ts'
import { Figure } from '../../figure/figure.tsx'
import { whenOf } from '../../figure/in-words.ts'
import { Line } from '../../figure/line.tsx'
import { Says } from '../../figure/says.tsx'
import { addressOf } from '../../shell/address.ts'
import { restingOn, roleOf, type WorkedOut } from './resting.ts'

/** What rests on one entry of the log: what the model makes of it, and every figure whose derivation names it. */
export function RestsOn({ id, ...worked }: WorkedOut & { readonly id: string }) {
  const { entries, trouble } = useEntries([id])
  const { data, ledger, outlook } = worked
  const role = useMemo(() => roleOf(id, worked), [id, data, outlook])
  const figures = useMemo(() => restingOn(id, worked), [id, data, ledger, outlook])
  const isWhole = ledger !== undefined && outlook !== undefined
  const [entry] = entries ?? []
  return (
    <section class="view rests" aria-labelledby="rests-title">
      <h2 id="rests-title">What rests on this entry</h2>
      {trouble && <p class="issue">{trouble}</p>}
      {entry && (
        <p class="lead">
          <a href={addressOf('record', undefined, { entry: id })}>
            {whenOf(entry)}: {entry.text}
          </a>
        </p>
      )}
      <Says sentence={role} />
      {figures.length > 0 && (
        <div class="legend">
          <h3>Figures that rest on it</h3>
          {figures.map((figure) => (
            <Line key={figure.id} figures={[figure]} className="entry">
              <span>{figure.name}</span> <Figure of={figure} />
            </Line>
          ))}
        </div>
      )}
      {!isWhole && <p class="quiet">More may follow: the model is at work.</p>}
      {isWhole && figures.length === 0 && (
        <p class="line">No figure of the span you look at rests on it. Look at the whole log to see more.</p>
      )}
    </section>
  )
}
