import { algaeKinds, catalogueAlone, watchDays } from '@holdfast/facts'
import { modelDay, type Outbreak } from '@holdfast/logbook'
import { addressOf } from '../../shell/address.ts'
import { dayText } from '../../water/days.ts'
import { dayInShort } from '../../ways/dates.ts'

interface OutbreaksOf {
  readonly outbreaks: readonly Outbreak[]
  readonly timeZone: string
  /** Shows the ladder for an outbreak that is open or back. */
  readonly onClimb: (outbreak: Outbreak) => void
}

const stageWords: Readonly<Record<Outbreak['stage'], string>> = {
  seen: 'seen',
  named: 'named',
  held: 'held',
  gone: 'gone',
  watched: 'watched',
  closed: 'closed',
  back: 'back again',
}

/** The outbreaks of this system and what became of them. */
export function Outbreaks({ outbreaks, timeZone, onClimb }: OutbreaksOf) {
  return (
    <section aria-labelledby="outbreaks">
      <h3 id="outbreaks">Outbreaks</h3>
      {outbreaks.length === 0 && <p class="line">None is in the log.</p>}
      <dl>
        {outbreaks.map((one) => (
          <div key={one.name}>
            <dt>{one.name}</dt>
            <dd>
              {saidOf(one, timeZone)}
              {canClimb(one) && (
                <p class="acts">
                  <button type="button" class="key" onClick={() => onClimb(one)}>
                    Show its ladder
                  </button>
                </p>
              )}
            </dd>
          </div>
        ))}
      </dl>
      <p class="acts">
        <a href={addressOf('record', undefined, { kind: 'outbreak' })}>Write how one stands</a>
      </p>
    </section>
  )
}

const canClimb = ({ stage, algae }: Outbreak): boolean =>
  algaeKinds().some(({ key }) => key === algae) && stage !== 'closed'

function saidOf(outbreak: Outbreak, timeZone: string): string {
  const { stage, since, from, algae, surfaces, carriedIn, done, stopped, worked } = outbreak
  const title = algaeKinds().find(({ key }) => key === algae)?.title ?? algae
  const dated = (list: typeof done): string =>
    list.map(({ what, on }) => `${what} (${dayInShort(on)})`).join(', ')
  const watched = stage === 'gone' || stage === 'watched'
  const until = dayText(modelDay(since, 12, timeZone) + watchDays(algae, catalogueAlone), timeZone)
  return [
    `${capital(stageWords[stage])} since ${dayInShort(since)}${from === since ? '' : `, first seen ${dayInShort(from)}`}.`,
    ...(title === undefined
      ? []
      : [`${capital(title)}${surfaces.length > 0 ? ` on ${surfaces.join(', ')}` : ''}.`]),
    ...(carriedIn === undefined ? [] : [`Carried in with ${carriedIn}.`]),
    ...(done.length === 0 ? [] : [`Done: ${dated(done)}.`]),
    ...(stopped.length === 0 ? [] : [`Stopped: ${dated(stopped)}.`]),
    ...(worked === undefined ? [] : [`The last time it ended after: ${worked}. Its ladder begins there.`]),
    ...(watched ? [`Look at it each week until ${until}; then it is closed.`] : []),
  ].join(' ')
}

const capital = (text: string): string => `${text[0]?.toUpperCase()}${text.slice(1)}`
