import { addressOf, type Place, places } from './address.ts'
import type { SystemData, SystemName } from './system-data.ts'

export interface HeaderOf {
  readonly place: Place
  readonly systems: readonly SystemName[]
  /** The system shown, where it is known already. */
  readonly shown: SystemName | undefined
  readonly onSystem: (id: string) => void
}

export function Header({ place, systems, shown, onSystem }: HeaderOf) {
  return (
    <header>
      <a class="skip" href="#place">
        {place === 'water' ? 'To the water' : 'To the record'}
      </a>
      <p class="mark">Holdfast</p>
      <h1>{shown ? shown.name : places[place]}</h1>
      <nav aria-label="Places">
        {(Object.keys(places) as Place[]).map((each) => (
          <a key={each} href={addressOf(each)} aria-current={each === place ? 'page' : undefined}>
            {places[each]}
          </a>
        ))}
      </nav>
      {place === 'water' && (
        <p class="log-from-here">
          <a class="large" href={addressOf('record')}>
            Log something
          </a>
        </p>
      )}
      {systems.length > 1 && (
        <p class="system-choice">
          <label for="system">System</label>{' '}
          <select id="system" value={shown?.id} onChange={(event) => onSystem(event.currentTarget.value)}>
            {systems.map((system) => (
              <option key={system.id} value={system.id}>
                {system.name}
              </option>
            ))}
          </select>
        </p>
      )}
    </header>
  )
}

/** Where the log lives, in a plain sentence. */
export function Kept({ data }: { readonly data: Pick<SystemData, 'kept'> }) {
  return <p class="lead">Your log is kept {data.kept}.</p>
}
