import type { JournalLine } from '@holdfast/logbook'
import { useEffect, useState } from 'preact/hooks'
import type { Described } from '../../shell/described.ts'
import { dayInWords } from '../../ways/dates.ts'
import { fetchLine } from '../outbox/log-api.ts'
import type { Acts } from './acts.ts'
import { LineOfJournal } from './line.tsx'

interface OneEntryOf {
  readonly id: string
  /** As the journal has them now; when they change, what became of the entry is asked anew. */
  readonly lines: readonly JournalLine[]
  readonly described: Described
  readonly acts: Acts
}

/** The entry that the address names, open, before all others: a figure that rests on it leads here. */
export function OneEntry({ id, lines, described, acts }: OneEntryOf) {
  const [line, setLine] = useState<JournalLine | undefined>()
  const [trouble, setTrouble] = useState('')
  useEffect(() => {
    fetchLine(id).then(
      (found) => {
        setLine(found)
        setTrouble('')
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [id, lines])
  return (
    <section class="one-entry" aria-labelledby="one-entry-title">
      <h3 id="one-entry-title">
        {line === undefined ? 'The entry you came for' : `From ${dayInWords(line.entry.at.slice(0, 10))}`}
      </h3>
      {trouble && (
        <p class="issue" role="alert">
          {trouble}
        </p>
      )}
      {line && (
        <ul class="log-lines">
          <LineOfJournal line={line} lines={lines} described={described} acts={acts} isAsked />
        </ul>
      )}
    </section>
  )
}
