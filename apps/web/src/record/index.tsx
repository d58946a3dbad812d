import '../style/journal.css'
import '../style/log.css'
import '../style/record.css'
import { addressOf, fromAddress } from '../shell/address.ts'
import type { Described } from '../shell/described.ts'
import { Later } from '../shell/later.tsx'
import { Log } from './log/index.tsx'
import { type View, viewNames, views } from './views.ts'

/** The sums bring the equations of sea water along, which logging does without. */
const loadSums = () => import('./sums/index.tsx').then(({ Sums }) => Sums)

/** A sheet is brought in now and then; logging does without what that takes. */
const loadImport = () => import('./import/index.tsx').then(({ ImportSheet }) => ImportSheet)

/** The catalogue is looked up now and then, and brings the model along to say what this tank draws on. */
const loadFacts = () => import('./facts/index.tsx').then(({ Facts }) => Facts)

const loadLetter = () => import('./letter/index.tsx').then(({ LetterView }) => LetterView)
const loadCopies = () => import('./copies/index.tsx').then(({ Copies }) => Copies)
const loadWays = () => import('./ways/index.tsx').then(({ YourWays }) => YourWays)

interface RecordOf {
  readonly described: Described | undefined
  /** Nothing is described yet, here or in the log. */
  readonly isBare: boolean
}

/** The place "Record": what is written down beside the tank, its letter, sheets of the past, sums, and the facts. */
export function RecordPlace({ described, isBare }: RecordOf) {
  const view = viewOf(isBare)
  const key = described?.system.id
  return (
    <>
      <nav class="record-views" aria-label="Record">
        {viewNames.map((each) => (
          <a
            key={each}
            href={addressOf('record', each === 'log' ? undefined : each)}
            aria-current={each === view ? 'page' : undefined}
          >
            {views[each]}
          </a>
        ))}
      </nav>
      {view === 'sums' && <Later load={loadSums} given={{}} />}
      {view === 'ways' && <Later load={loadWays} given={{}} />}
      {view === 'copies' && <Later load={loadCopies} given={{}} />}
      {view === 'letter' && (described || isBare) && (
        <Later key={key} load={loadLetter} given={{ described }} />
      )}
      {view === 'facts' && described && <Later key={key} load={loadFacts} given={{ described }} />}
      {view === 'import' && described && <Later key={key} load={loadImport} given={{ described }} />}
      {view === 'log' && described && <Log key={key} described={described} />}
    </>
  )
}

/** Views that need no system. */
const ofNoSystem: readonly View[] = ['sums', 'ways', 'copies']

/** Where there is nothing to write about, the letter comes first. */
function viewOf(isBare: boolean): View {
  const named = viewNames.find((each) => each === fromAddress('view')) ?? 'log'
  return isBare && !ofNoSystem.includes(named) ? 'letter' : named
}
