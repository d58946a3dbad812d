import { addressOf, fromAddress, type Place, placeNames, places } from './address.ts'
import type { SystemData, SystemName } from './system-data.ts'

export interface HeaderOf {
  readonly place: Place
  readonly systems: readonly SystemName[]
  /** The system shown, where it is known already. */
  readonly shown: SystemName | undefined
  readonly onSystem: (id: string) => void
}

/** Where one is, the four places, and the button that logs from anywhere; on a telephone they are at the thumb. */
export function Header({ place, systems, shown, onSystem }: HeaderOf) {
  const { title } = places[place]
  const isOfOne = place !== 'today' && shown !== undefined
  return (
    <header>
      <a class="skip" href="#place">
        To {title.toLowerCase()}
      </a>
      <p class="mark">Holdfast</p>
      <h1>
        {title}
        {isOfOne && systems.length < 2 && <span class="of"> {shown.name}</span>}
      </h1>
      {isOfOne && systems.length > 1 && (
        <p class="system-choice">
          <label for="system">of</label>{' '}
          <select id="system" value={shown?.id} onChange={(event) => onSystem(event.currentTarget.value)}>
            {systems.map((system) => (
              <option key={system.id} value={system.id}>
                {system.name}
              </option>
            ))}
          </select>
        </p>
      )}
      <div class="places">
        <nav aria-label="Places">
          {placeNames.map((each) => (
            <a key={each} href={addressOf(each)} aria-current={each === place ? 'page' : undefined}>
              {places[each].title}
            </a>
          ))}
        </nav>
        <a class="large log-it" href={addressOf('record')} aria-current={isLog(place) ? 'page' : undefined}>
          Log<span class="roomy"> something</span>
        </a>
      </div>
    </header>
  )
}

const isLog = (place: Place) => place === 'record' && (fromAddress('view') ?? 'log') === 'log'

/** Where the log lives, in a plain sentence. */
export function Kept({ data }: { readonly data: Pick<SystemData, 'kept'> }) {
  return <p class="lead">Your log is kept {data.kept}.</p>
}
