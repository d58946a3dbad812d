import '../../style/identify.css'
import '../../style/ladder.css'
import { mayBeStartingUp } from '@holdfast/commissioning/age'
import { algaeKinds, controlsOf } from '@holdfast/facts'
import type { LadderAnswer, Rung } from '@holdfast/ladder'
import { useMemo, useState } from 'preact/hooks'
import { keepStarted, nameOfStart } from '../../record/log/started.ts'
import { addressOf, fromAddress, intoAddress } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import { dayText } from '../../water/days.ts'
import { questionOf } from '../../water/question.ts'
import type { Answer as Told } from '../../worker/protocol.ts'
import { useAnswer } from '../../worker/use-answer.ts'
import { Outbreaks } from './outbreaks.tsx'
import { RungView } from './rung.tsx'

const ladderIn = (told: Told) => ('ladder' in told ? told.ladder : undefined)

const kinds = algaeKinds().filter(({ key }) => controlsOf(key).length > 0)

/** What to do about the water and what grows: why, one measure after the other, and what would harm here. */
export function Ladder({ data }: { readonly data: SystemData }) {
  const [kind, setKind] = useState(() => kinds.find(({ key }) => key === fromAddress('kind'))?.key)
  const [finer, setFiner] = useState(() => fromAddress('finer') ?? undefined)
  const [worked, setWorked] = useState<string | undefined>()
  const [allAnimals, setAllAnimals] = useState(false)
  const asked = useMemo(() => {
    const wishes = {
      ...(kind === undefined ? {} : { kind }),
      ...(finer === undefined ? {} : { finer }),
      ...(worked === undefined ? {} : { worked }),
      ...(data.salinity_psu === undefined ? {} : { salinity_psu: data.salinity_psu }),
      ...(allAnimals ? { withCaution: 'all' as const } : {}),
    }
    return { kind: 'ladder', outlook: questionOf(data), wishes } as const
  }, [data, kind, finer, worked, allAnimals])
  const now = useAnswer(asked, ladderIn)
  const choose = (chosen: string, workedBefore?: string) => {
    setWorked(workedBefore)
    const next = chosen === '' ? undefined : chosen
    intoAddress({ kind: next, finer: undefined })
    setFiner(undefined)
    setKind(next)
  }
  return (
    <section class="view ladder" aria-labelledby="ladder-title">
      <h2 id="ladder-title">What to do</h2>
      <p class="lead">
        The cause first, the gentlest measure first, one change at a time. What would harm here is left out,
        and says why.
      </p>
      <p class="acts">
        <label>
          For{' '}
          <select value={kind ?? ''} onChange={(event) => choose(event.currentTarget.value)}>
            <option value="">the water and what grows most</option>
            {kinds.map(({ key, title }) => (
              <option key={key} value={key}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <label class="check">
          <input
            type="checkbox"
            checked={allAnimals}
            onChange={(event) => setAllAnimals(event.currentTarget.checked)}
          />{' '}
          also animals that are safe with caution only
        </label>
      </p>
      <Working asked={now} what="The ladder" />
      {now.answer && <Answer answer={now.answer} data={data} isOld={now.old} />}
      <Outbreaks
        outbreaks={data.outbreaks}
        timeZone={data.system.timeZone}
        onClimb={({ algae = '', worked: before }) => choose(algae, before)}
      />
    </section>
  )
}

interface AnswerOf {
  readonly answer: LadderAnswer
  readonly data: SystemData
  readonly isOld: boolean
}

function Answer({ answer, data, isOld }: AnswerOf) {
  const { kind, causes, rungs, leftOut } = answer
  const { id, timeZone } = data.system
  const date = (day: number): string => dayText(day, timeZone)
  const begin = ({ title }: Rung) => {
    const typed = { done: title, ...(kind === undefined ? {} : { algae: kind }) }
    keepStarted(nameOfStart(id, 'outbreak'), { typed, units: {}, when: 'now' })
    location.assign(addressOf('record', undefined, { kind: 'outbreak' }))
  }
  if (causes.length === 0)
    return (
      <p class="line">
        {isKnownOfLate(data)
          ? 'Nothing stands out: the water in its band, nothing broken, no growth seen of late. Look again in a week.'
          : 'Nothing can be said: the log has neither a reading nor a survey of the last four weeks. Test nitrate and phosphate, and look at a surface.'}
      </p>
    )
  return (
    <div class={isOld ? 'old' : undefined}>
      <section aria-labelledby="ladder-why">
        <h3 id="ladder-why">Why</h3>
        <ul class="causes">
          {causes.map(({ key, says }) => (
            <li key={key}>{says}</li>
          ))}
        </ul>
      </section>
      {mayBeStartingUp(data.system, data) && (
        <p class="acts">
          <a href={addressOf('water', 'start-up')}>How its start-up stands</a>
        </p>
      )}
      <section aria-labelledby="ladder-rungs">
        <h3 id="ladder-rungs">In this order</h3>
        <ol class="rungs">
          {rungs.map((rung, at) => (
            <RungView
              key={rung.measure}
              rung={rung}
              isNext={at === 0}
              date={date}
              onBegin={() => begin(rung)}
            />
          ))}
        </ol>
        {rungs.length === 0 && <p class="line">Nothing that would help and do no harm.</p>}
      </section>
      {leftOut.length > 0 && (
        <section aria-labelledby="ladder-not">
          <h3 id="ladder-not">Not here</h3>
          <dl>
            {leftOut.map(({ measure, title, because }) => (
              <div key={measure}>
                <dt>{title}</dt>
                <dd>{because}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </div>
  )
}

/** Without a reading of late that nothing stands out says nothing of the tank. */
const isKnownOfLate = ({ observations, asOf }: SystemData): boolean =>
  observations.some(({ day }) => day <= asOf && day >= asOf - 28)
