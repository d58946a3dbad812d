import '../style/record.css'
import { addressOf, fromAddress } from '../shell/address.ts'
import type { Described } from '../shell/described.ts'
import { Sums } from './sums/index.tsx'

/** The views of the record, by their names in the address; the first is shown where none is named. */
const views = { log: 'Log', sums: 'Sums' } as const

/** The place "Record": what is written down beside the tank, and the sums that come before. */
export function RecordPlace({ described }: { readonly described: Described | undefined }) {
  const view = fromAddress('view') === 'sums' ? 'sums' : 'log'
  return (
    <>
      <nav aria-label="Record">
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
      {view === 'sums' ? <Sums /> : described && <p>{described.system.name}</p>}
    </>
  )
}
