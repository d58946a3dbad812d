import '../style/journal.css'
import '../style/log.css'
import '../style/record.css'
import { addressOf, fromAddress } from '../shell/address.ts'
import type { Described } from '../shell/described.ts'
import { Later } from '../shell/later.tsx'
import { Log } from './log/index.tsx'

/** The views of the record, by their names in the address; the first is shown where none is named. */
const views = { log: 'Log', import: 'Import', sums: 'Sums', facts: 'Facts' } as const

type View = keyof typeof views

/** The sums bring the equations of sea water along, which logging does without. */
const loadSums = () => import('./sums/index.tsx').then(({ Sums }) => Sums)

/** A sheet is brought in now and then; logging does without what that takes. */
const loadImport = () => import('./import/index.tsx').then(({ ImportSheet }) => ImportSheet)

/** The catalogue is looked up now and then, and brings the model along to say what this tank draws on. */
const loadFacts = () => import('./facts/index.tsx').then(({ Facts }) => Facts)

/** The place "Record": what is written down beside the tank, sheets of the past, the sums that come before, and the facts. */
export function RecordPlace({ described }: { readonly described: Described | undefined }) {
  const named = fromAddress('view')
  const view = (Object.keys(views) as View[]).find((each) => each === named) ?? 'log'
  return (
    <>
      <nav class="record-views" aria-label="Record">
        {(Object.keys(views) as View[]).map((each) => (
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
      {view === 'facts' && described && (
        <Later key={described.system.id} load={loadFacts} given={{ described }} />
      )}
      {view === 'import' && described && (
        <Later key={described.system.id} load={loadImport} given={{ described }} />
      )}
      {view === 'log' && described && <Log key={described.system.id} described={described} />}
    </>
  )
}
