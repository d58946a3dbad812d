import type { JournalLine } from '@holdfast/logbook'
import { fromAddress } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { dayInWords } from '../../ways/dates.ts'
import type { Acts } from './acts.ts'
import { byDay, type Group } from './by-day.ts'
import { importInWords } from './import-in-words.ts'
import { Imports } from './imports.tsx'
import { LineOfJournal } from './line.tsx'
import { OneEntry } from './one-entry.tsx'
import type { Journal } from './use-journal.ts'

interface JournalOf {
  readonly described: Described
  readonly journal: Journal
  readonly words: string
  readonly onWords: (words: string) => void
  readonly acts: Acts
}

/** All that was written down, the latest day first; nothing is hidden. */
export function JournalView({ described, journal, words, onWords, acts }: JournalOf) {
  const { lines, more, trouble, older } = journal
  const asked = fromAddress('entry') ?? undefined
  return (
    <section class="view" aria-labelledby="journal-title">
      <h2 id="journal-title">What is written down</h2>
      <p class="lead">Your log is kept {described.kept}.</p>
      <div class="blank search">
        <label for="words">Search</label>
        <span class="typed words-typed">
          <input
            id="words"
            type="search"
            autocomplete="off"
            value={words}
            onInput={(event) => onWords(event.currentTarget.value)}
          />
        </span>
      </div>
      {asked !== undefined && <OneEntry id={asked} lines={lines ?? []} described={described} acts={acts} />}
      {trouble && (
        <p class="issue" role="alert">
          {trouble} {lines && 'What is below was so when it last answered.'}
        </p>
      )}
      {lines?.length === 0 && (
        <p class="lead">
          {words.trim() === '' ? 'Nothing yet. What you log above stands here.' : `Nothing holds “${words}”.`}
        </p>
      )}
      <Imports lines={lines ?? []} acts={acts} />
      {byDay(lines ?? []).map(({ date, groups }) => (
        <section class="log-day" key={date} aria-labelledby={`day-${date}`}>
          <h3 id={`day-${date}`}>{dayInWords(date)}</h3>
          {groups.map((group) => (
            <Together key={group.batch} group={group} lines={lines ?? []} described={described} acts={acts} />
          ))}
        </section>
      ))}
      {more && (
        <button type="button" class="key" onClick={older}>
          Show older ones
        </button>
      )}
    </section>
  )
}

interface TogetherOf {
  readonly group: Group
  readonly described: Described
  readonly lines: readonly JournalLine[]
  readonly acts: Acts
}

/** The lines of a group; those of an import stand along a rule of their own. */
function Together({ group: { batch, lines: ofGroup }, lines, described, acts }: TogetherOf) {
  const list = (
    <ul class="log-lines">
      {ofGroup.map((line) => (
        <LineOfJournal key={line.entry.id} line={line} lines={lines} described={described} acts={acts} />
      ))}
    </ul>
  )
  return batch === undefined ? (
    list
  ) : (
    <fieldset class="import" aria-label={`From ${importInWords(batch)}`}>
      {list}
    </fieldset>
  )
}
