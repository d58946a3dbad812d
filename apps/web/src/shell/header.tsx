import { addressOf, type Place } from './address.ts'
import type { SystemData, SystemName } from './system-data.ts'

const places: readonly (readonly [Place, string])[] = [
  ['water', 'Water'],
  ['record', 'Record'],
]

export interface HeaderOf {
  readonly place: Place
  readonly systems: readonly SystemName[]
  readonly data: SystemData | undefined
  readonly onSystem: (id: string) => void
}

export function Header({ place, systems, data, onSystem }: HeaderOf) {
  return (
    <header>
      <a class="skip" href="#place">
        {place === 'water' ? 'To the water' : 'To the record'}
      </a>
      <p class="mark">Holdfast</p>
      <h1>{data ? data.system.name : 'Water'}</h1>
      {data && <p class="lead">Your log is kept {data.kept}.</p>}
      <nav aria-label="Places">
        {places.map(([each, title]) => (
          <a key={each} href={addressOf(each)} aria-current={each === place ? 'page' : undefined}>
            {title}
          </a>
        ))}
      </nav>
      {place === 'water' && (
        <nav aria-label="On this page">
          <a href="#ledger-title">Ledger</a>
          <a href="#outlook-title">Outlook</a>
          <a href="#not-modelled">Not modelled yet</a>
        </nav>
      )}
      {systems.length > 1 && (
        <p class="system-choice">
          <label for="system">System</label>{' '}
          <select
            id="system"
            value={data?.system.id}
            onChange={(event) => onSystem(event.currentTarget.value)}
          >
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
