import { useEffect, useState } from 'preact/hooks'
import { Water } from '../water/index.tsx'
import { fromAddress, intoAddress } from './address.ts'
import { Header } from './header.tsx'
import { fetchSystem, fetchSystems, type SystemData, type SystemName } from './system-data.ts'

/** The page: a system, and its water. */
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
    document.title = data ? `Water · ${data.system.name} · Holdfast` : 'Holdfast'
  }, [data])

  const choose = (next: string) => {
    intoAddress({ system: next, volume: undefined, every: undefined })
    setChosen(next)
  }
  return (
    <>
      <Header systems={systems ?? []} data={data} onSystem={choose} />
      <main id="water" tabIndex={-1}>
        {trouble && (
          <p class="issue" role="alert">
            {trouble}
          </p>
        )}
        {systems?.length === 0 && (
          <p class="lead">
            There is no system yet. Bring one in with the command line, then reload this page.
          </p>
        )}
        {data && <Water key={data.system.id} data={data} />}
      </main>
    </>
  )
}
