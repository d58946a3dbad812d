import type { JournalLine } from '@holdfast/logbook'
import { counted } from '../../ways/counts.ts'
import type { Acts } from './acts.ts'
import { importInWords } from './import-in-words.ts'
import { takenBackBy } from './whole-import.ts'

interface ImportsOf {
  readonly lines: readonly JournalLine[]
  readonly acts: Acts
}

/** The imports of which lines are shown; each is taken back, and brought back, as one. */
export function Imports({ lines, acts }: ImportsOf) {
  const batches = [...new Set(lines.flatMap(({ entry }) => entry.batch ?? []))]
  if (batches.length === 0) return null
  return (
    <ul class="imports" aria-label="Imports">
      {batches.map((batch) => (
        <Import
          key={batch}
          batch={batch}
          lines={lines.filter(({ entry }) => entry.batch === batch)}
          acts={acts}
        />
      ))}
    </ul>
  )
}

function Import({ batch, lines, acts }: ImportsOf & { readonly batch: string }) {
  const says = importInWords(batch)
  const by = takenBackBy(lines)
  const count = counted(lines.length, 'entry', 'entries')
  return (
    <li>
      <span>
        {count} below came by {says}
      </span>
      {by === undefined ? (
        <button type="button" class="key" onClick={() => acts.undoImport(batch, says)}>
          Undo the whole import
        </button>
      ) : (
        <button type="button" class="key" onClick={() => acts.bringImportBack(batch, by, says)}>
          Bring the whole import back
        </button>
      )}
    </li>
  )
}
