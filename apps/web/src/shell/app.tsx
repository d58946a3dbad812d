import { useEffect, useState } from 'preact/hooks'
import { fromAddress, intoAddress, placeInAddress, places } from './address.ts'
import { type Described, describedBefore, keepDescribed } from './described.ts'
import { Header } from './header.tsx'
import { Later } from './later.tsx'
import { fetchDescribed, fetchSystem, fetchSystems, type SystemData, type SystemName } from './system-data.ts'

const place = placeInAddress()
/** Logging brings no model along, and the model no form for logging. */
const loadWater = () => import('../water/index.tsx').then(({ Water }) => Water)
const loadRecord = () => import('../record/index.tsx').then(({ RecordPlace }) => RecordPlace)

/** The page: a system, and one of its places. */
export function App() {
  const [systems, setSystems] = useState<readonly SystemName[] | undefined>()
  const [chosen, setChosen] = useState<string | undefined>(fromAddress('system') ?? undefined)
  const [data, setData] = useState<SystemData | undefined>()
  const [described, setDescribed] = useState<Described | undefined>(() => describedBefore(chosen))
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
    setDescribed(describedBefore(id))
    const show = (answer: Described) => {
      keepDescribed(answer)
      if (!overtaken) setDescribed(answer)
    }
    // A log of years is not fetched to write one more entry.
    const shown =
      place === 'record'
        ? fetchDescribed(id, new Date()).then(show)
        : fetchSystem(id).then((answer) => {
            show(answer)
            if (!overtaken) setData(answer)
          })
    shown.catch(tell)
    return () => {
      overtaken = true
    }
  }, [id])

  const name = described?.system.name
  useEffect(() => {
    document.title = [places[place], name, 'Holdfast'].filter((part) => part !== undefined).join(' · ')
  }, [name])

  const choose = (next: string) => {
    intoAddress({ system: next, volume: undefined, every: undefined })
    setChosen(next)
  }
  return (
    <>
      <Header place={place} systems={systems ?? []} shown={described?.system} onSystem={choose} />
      <main id="place" tabIndex={-1}>
        {trouble && !(place === 'record' && described) && (
          <p class="issue" role="alert">
            {trouble}
          </p>
        )}
        {systems?.length === 0 && (
          <p class="lead">
            There is no system yet. Bring one in with the command line, then reload this page.
          </p>
        )}
        {place === 'record' && <Later load={loadRecord} given={{ described }} />}
        {place === 'water' && data && <Later key={data.system.id} load={loadWater} given={{ data }} />}
      </main>
    </>
  )
}
