import '../style/surfaces.css'
import { addressOf, fromAddress } from '../shell/address.ts'
import { Later } from '../shell/later.tsx'
import type { SystemData } from '../shell/system-data.ts'
import { viewNames, views } from './views.ts'

const loadReach = () => import('./reach/index.tsx').then(({ Reach }) => Reach)

const loadCrew = () => import('./crew/index.tsx').then(({ CrewView }) => CrewView)

/** The key is asked now and then, and brings its table of traits along. */
const loadIdentify = () => import('./identify/index.tsx').then(({ Identify }) => Identify)

const loadLadder = () => import('./ladder/index.tsx').then(({ Ladder }) => Ladder)

/** The place "Surfaces": what grows where, and what it is. */
export function Surfaces({ data }: { readonly data: SystemData }) {
  const view = viewNames.find((each) => each === fromAddress('view')) ?? 'reach'
  return (
    <>
      <nav class="surface-views" aria-label="Surfaces">
        {viewNames.map((each) => (
          <a
            key={each}
            href={addressOf('surfaces', each === 'reach' ? undefined : each)}
            aria-current={each === view ? 'page' : undefined}
          >
            {views[each]}
          </a>
        ))}
      </nav>
      {view === 'reach' && <Later load={loadReach} given={{ data }} />}
      {view === 'crew' && <Later load={loadCrew} given={{ data }} />}
      {view === 'identify' && <Later load={loadIdentify} given={{ data }} />}
      {view === 'ladder' && <Later load={loadLadder} given={{ data }} />}
    </>
  )
}
