import '../style/journal.css'
import '../style/today.css'
import { coralBand, coralBands, fact } from '@holdfast/facts'
import { useEffect, useState } from 'preact/hooks'
import { today } from '../record/log/when.ts'
import { addressOf } from '../shell/address.ts'
import { fetchDescribed, type SystemName } from '../shell/system-data.ts'
import { dayInWords } from '../ways/dates.ts'
import { fetchLatest } from './log-of-today.ts'
import { PutAwaySystems } from './put-away-systems.tsx'
import { type State, stateOf } from './state.ts'

/** The place "Today": each system in a sentence or two, and what its record lacks. */
export function Today({ systems }: { readonly systems: readonly SystemName[] }) {
  return (
    <>
      <p class="lead">{dayInWords(today(Intl.DateTimeFormat().resolvedOptions().timeZone, new Date()))}</p>
      {systems.map((system) => (
        <SystemToday key={system.id} of={system} />
      ))}
      <PutAwaySystems />
      {systems.length > 0 && (
        <p class="acts">
          <a href={addressOf('record', 'letter', { new: 'yes' })}>Describe a new system</a>
        </p>
      )}
    </>
  )
}

function SystemToday({ of: { id, name } }: { readonly of: SystemName }) {
  const [state, setState] = useState<State | undefined>()
  const [trouble, setTrouble] = useState('')
  useEffect(() => {
    Promise.all([fetchDescribed(id, new Date()), fetchLatest(id)]).then(
      ([{ system }, lines]) => {
        const corals = (system.corals && coralBand(system.corals.kind)) ?? coralBands()[0]
        const bands = (['nitrate', 'phosphate'] as const).flatMap((quantity) =>
          corals === undefined ? [] : [{ quantity, ...fact(corals[quantity]) }],
        )
        setState(stateOf({ system, lines, bands, today: today(system.timeZone, new Date()) }))
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [id])
  return (
    <section class="view today" aria-labelledby={`today-${id}`}>
      <h2 id={`today-${id}`}>
        <a href={addressOf('water', undefined, { system: id })}>{name}</a>
      </h2>
      {trouble && (
        <p class="issue" role="alert">
          {trouble}
        </p>
      )}
      {state?.says.map((sentence) => (
        <p class="line" key={sentence}>
          {sentence}
        </p>
      ))}
      {state && state.lacks.length === 0 && <p class="line lacks">The record lacks nothing today.</p>}
      {state?.lacks.map((sentence) => (
        <p class="line lacks" key={sentence}>
          {sentence}
        </p>
      ))}
      {state && (
        <p class="acts">
          <a href={addressOf('record', undefined, { system: id })}>Log for this system</a>
          <a href={addressOf('record', 'letter', { system: id })}>Its letter</a>
        </p>
      )}
    </section>
  )
}
