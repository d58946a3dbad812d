import { useCallback, useEffect, useState } from 'preact/hooks'
import { fromAddress, intoAddress, placeInAddress, places } from './address.ts'
import { type Described, describedBefore, keepDescribed } from './described.ts'
import { Footer } from './footer.tsx'
import { Header } from './header.tsx'
import { KeyList } from './key-list.tsx'
import { Later } from './later.tsx'
import { NoSystem } from './no-system.tsx'
import { fetchDescribed, fetchSystem, fetchSystems, type SystemData, type SystemName } from './system-data.ts'
import { type Sheet, useKeys } from './use-keys.ts'

const place = placeInAddress()
/** Logging brings no model along, and the model no form for logging. */
const loadToday = () => import('../today/index.tsx').then(({ Today }) => Today)
const loadWater = () => import('../water/index.tsx').then(({ Water }) => Water)
const loadStartUp = () => import('../water/start/index.tsx').then(({ StartUp }) => StartUp)
const loadSurfaces = () => import('../surfaces/index.tsx').then(({ Surfaces }) => Surfaces)
const loadRecord = () => import('../record/index.tsx').then(({ RecordPlace }) => RecordPlace)
const loadPalette = () => import('./palette/index.tsx').then(({ Palette }) => Palette)

/** A start-up is a view of the water of its own: it asks for neither ledger nor outlook. */
const isOfStartUp = fromAddress('view') === 'start-up'

/** A log of years is fetched where the model needs it, not to write one more entry. */
const isOfModel = place === 'water' || place === 'surfaces'

const isSame = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other)

/** The page: a system, and one of its places. */
export function App() {
  const [systems, setSystems] = useState<readonly SystemName[] | undefined>()
  const [chosen, setChosen] = useState<string | undefined>(fromAddress('system') ?? undefined)
  const [data, setData] = useState<SystemData | undefined>()
  const [described, setDescribed] = useState<Described | undefined>(() => describedBefore(chosen))
  const [trouble, setTrouble] = useState('')
  const [sheet, setSheet] = useState<Sheet | undefined>()
  const tell = (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error))
  useKeys(sheet !== undefined, setSheet)
  const close = useCallback(() => setSheet(undefined), [])

  useEffect(() => {
    fetchSystems().then(setSystems, tell)
  }, [])

  const id = chosen ?? systems?.[0]?.id
  useEffect(() => {
    if (id === undefined || place === 'today') return
    let overtaken = false
    setData(undefined)
    setDescribed(describedBefore(id))
    const show = (answer: Described) => {
      keepDescribed(answer)
      if (!overtaken) setDescribed(answer)
    }
    const shown = isOfModel
      ? fetchSystem(id).then((answer) => {
          show(answer)
          if (!overtaken) setData(answer)
        })
      : fetchDescribed(id, new Date()).then(show)
    shown.catch(tell)
    // What was logged elsewhere meanwhile is taken in when one comes back to the page.
    const look = () => {
      if (!isOfModel || document.visibilityState !== 'visible') return
      fetchSystem(id).then((answer) => {
        if (!overtaken) setData((before) => (isSame(before, answer) ? before : answer))
      }, tell)
    }
    document.addEventListener('visibilitychange', look)
    return () => {
      overtaken = true
      document.removeEventListener('visibilitychange', look)
    }
  }, [id])

  const name = place === 'today' ? undefined : described?.system.name
  useEffect(() => {
    document.title = [places[place].title, name, 'Holdfast'].filter((part) => part !== undefined).join(' · ')
  }, [name])

  const choose = (next: string) => {
    intoAddress({ system: next, volume: undefined, every: undefined })
    setChosen(next)
  }
  /** A letter about a new system is about none that is there. */
  const isOfNone = fromAddress('new') !== null
  const isBare = systems?.length === 0 && (place !== 'record' || described === undefined)
  return (
    <>
      <Header
        place={place}
        systems={systems ?? []}
        shown={isOfNone ? undefined : described?.system}
        onSystem={choose}
      />
      <main id="place" tabIndex={-1}>
        {trouble && !(place === 'record' && described) && (
          <p class="issue" role="alert">
            {trouble}
          </p>
        )}
        {isBare && place !== 'record' && <NoSystem />}
        {place === 'today' && systems && <Later load={loadToday} given={{ systems }} />}
        {place === 'water' && data && (
          <Later key={data.system.id} load={isOfStartUp ? loadStartUp : loadWater} given={{ data }} />
        )}
        {place === 'surfaces' && data && <Later key={data.system.id} load={loadSurfaces} given={{ data }} />}
        {place === 'record' && <Later load={loadRecord} given={{ described, isBare }} />}
      </main>
      <Footer onOpen={setSheet} />
      {sheet === 'palette' && <Later load={loadPalette} given={{ systems: systems ?? [], onClose: close }} />}
      {sheet === 'keys' && <KeyList onClose={close} />}
    </>
  )
}
