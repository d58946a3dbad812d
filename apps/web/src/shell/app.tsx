import { useEffect, useState } from 'preact/hooks'
import { Water } from '../water/index.tsx'
import { fromAddress, intoAddress, placeInAddress } from './address.ts'
import { Header } from './header.tsx'
import { Later } from './later.tsx'
import { fetchSystem, fetchSystems, type SystemData, type SystemName } from './system-data.ts'

const place = placeInAddress()
/** The record brings the equations of sea water along, which the first view does without. */
const loadRecord = () => import('../record/index.tsx').then(({ RecordPlace }) => RecordPlace)

/** The page: a system, and one of its places. */
export function App() {
  const [systems, setSystems] = useState<readonly SystemName[] | undefined>()
  const [chosen, setChosen] = useState<string | undefined>(fromAddress('system') ?? undefined)
  const [data, setData] = useState<SystemData | undefined>()
  const [trouble, setTrouble] = useState('')
  const tell = (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error))

  useEffect(() => {
    fetchSystems().then(setSystems, tell)
  }, [])

  const id = chosen ?? systems?.[0]?.id
  useEffect(() => {
    if (id === undefined) return
    let overtaken = false
    setData(undefined)
    fetchSystem(id).then((answer) => !overtaken && setData(answer), tell)
    return () => {
      overtaken = true
    }
  }, [id])

  useEffect(() => {
    const title = place === 'water' ? 'Water' : 'Record'
    document.title = data ? `${title} · ${data.system.name} · Holdfast` : 'Holdfast'
  }, [data])

  const choose = (next: string) => {
    intoAddress({ system: next, volume: undefined, every: undefined })
    setChosen(next)
  }
  return (
    <>
      <Header place={place} systems={systems ?? []} data={data} onSystem={choose} />
      <main id="place" tabIndex={-1}>
        {trouble && (
          <p class="issue" role="alert">
            {trouble}
          </p>
        )}
        {place === 'water' && systems?.length === 0 && (
          <p class="lead">
            There is no system yet. Bring one in with the command line, then reload this page.
          </p>
        )}
        {place === 'record' && <Later load={loadRecord} />}
        {place === 'water' && data && <Water key={data.system.id} data={data} />}
      </main>
    </>
  )
}
