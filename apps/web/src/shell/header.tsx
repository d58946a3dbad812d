import type { SystemData, SystemName } from './system-data.ts'

export interface HeaderOf {
  readonly systems: readonly SystemName[]
  readonly data: SystemData | undefined
  readonly onSystem: (id: string) => void
}

export function Header({ systems, data, onSystem }: HeaderOf) {
  return (
    <header>
      <a class="skip" href="#water">
        To the water
      </a>
      <p class="mark">Holdfast</p>
      <h1>{data ? data.system.name : 'Water'}</h1>
      {data && <p class="lead">Your log is kept {data.kept}.</p>}
      <nav aria-label="On this page">
        <a href="#ledger-title">Ledger</a>
        <a href="#outlook-title">Outlook</a>
        <a href="#not-modelled">Not modelled yet</a>
      </nav>
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
