import '../style/journal.css'
import '../style/log.css'
import '../style/record.css'
import { addressOf, fromAddress } from '../shell/address.ts'
import type { Described } from '../shell/described.ts'
import { Later } from '../shell/later.tsx'
import { Log } from './log/index.tsx'

/** The views of the record, by their names in the address; the first is shown where none is named. */
const views = { log: 'Log', sums: 'Sums' } as const

/** The sums bring the equations of sea water along, which logging does without. */
const loadSums = () => import('./sums/index.tsx').then(({ Sums }) => Sums)

/** The place "Record": what is written down beside the tank, and the sums that come before. */
export function RecordPlace({ described }: { readonly described: Described | undefined }) {
  const view = fromAddress('view') === 'sums' ? 'sums' : 'log'
  return (
    <>
      <nav class="record-views" aria-label="Record">
        {(['log', 'sums'] as const).map((each) => (
          <a
            key={each}
            href={addressOf('record', each === 'log' ? undefined : each)}
            aria-current={each === view ? 'page' : undefined}
          >
            {views[each]}
          </a>
        ))}
      </nav>
      {view === 'sums' ? (
        <Later load={loadSums} given={{}} />
      ) : (
        described && <Log key={described.system.id} described={described} />
      )}
    </>
  )
}
