import type { EntryKind } from '@holdfast/logbook'
import { useState } from 'preact/hooks'
import { kindsToWrite, titleOf } from './kinds-to-write.ts'
import { remembered } from './remembered.ts'

/** In sight at once; the others are behind one key. */
const inSight = 4

/** The kinds, those last used first. */
export function kindsByUse(): readonly EntryKind[] {
  const used = remembered().kinds.flatMap((kind) => kindsToWrite.filter((one) => one === kind))
  return [...new Set([...used, ...usual, ...kindsToWrite])]
}

/** What is written most often beside a tank. */
const usual: readonly EntryKind[] = ['reading', 'water-change', 'feeding', 'note']

interface KindsOf {
  readonly chosen: EntryKind
  readonly onChoose: (kind: EntryKind) => void
}

/** What there is to write down, as large buttons. Their order stays while the page is open. */
export function Kinds({ chosen, onChoose }: KindsOf) {
  const [order] = useState(kindsByUse)
  const [all, setAll] = useState(false)
  const first = order.slice(0, inSight)
  const shown = all ? order : first.includes(chosen) ? first : [...first, chosen]
  return (
    <div class="kinds" role="group" aria-label="What to write down">
      {shown.map((kind) => (
        <button
          key={kind}
          type="button"
          class="large"
          aria-pressed={kind === chosen}
          onClick={() => {
            setAll(false)
            onChoose(kind)
          }}
        >
          {titleOf(kind)}
        </button>
      ))}
      <button type="button" class="key" aria-expanded={all} onClick={() => setAll(!all)}>
        {all ? 'Fewer' : 'Something else'}
      </button>
    </div>
  )
}
