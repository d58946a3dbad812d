import { grazer } from '@holdfast/facts'
import { keepStarted, nameOfStart } from '../../record/log/started.ts'
import { addressOf } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { dayText } from '../../water/days.ts'
import { dayInShort } from '../../ways/dates.ts'
import { counted } from '../counted.ts'
import type { KeptPlan, Moved } from './kept.ts'
import { BeforeEachStep } from './plan.tsx'
import { startOf } from './start-of.ts'

interface KeptPlanOf {
  readonly plan: KeptPlan
  readonly data: SystemData
  readonly onTakeBack: () => void
}

const nameOf = (taxon: string): string => grazer(taxon)?.tradeName ?? taxon

/** The plan that stands in the log: its steps with their days, who came of them, and the way to log the others. */
export function KeptPlanView({ plan, data, onTakeBack }: KeptPlanOf) {
  const { system } = data
  const first = startOf(plan.asOf, plan.at.slice(0, 10), system.timeZone)
  const all = [...plan.steps.flatMap(({ animals }) => animals), ...plan.leave]
  return (
    <section class="kept-plan" aria-labelledby="kept-plan">
      <h3 id="kept-plan">The plan you kept</h3>
      <p class="line quiet">
        Kept on {dayInShort(plan.at.slice(0, 10))}.{' '}
        {all.every(isDone)
          ? 'All of it is done.'
          : 'Nothing changes in the tank, or in the model, until you log who came.'}
      </p>
      {plan.steps.length > 0 && (
        <ol class="steps-of-crew">
          {plan.steps.map(({ after_days, animals }) => (
            <li key={after_days}>
              <b>{dayText(first + after_days, system.timeZone)}</b>
              <ul class="plain">
                {animals.map((moved) => (
                  <Line key={moved.taxon} moved={moved} change="added" system={system.id} />
                ))}
              </ul>
            </li>
          ))}
        </ol>
      )}
      {plan.leave.length > 0 && (
        <>
          <p class="line">To give away, to another system, a club or a shop:</p>
          <ul class="plain">
            {plan.leave.map((moved) => (
              <Line key={moved.taxon} moved={moved} change="taken out" system={system.id} />
            ))}
          </ul>
        </>
      )}
      {plan.steps.length > 0 && !all.every(isDone) && <BeforeEachStep />}
      <p class="acts">
        <button type="button" class="key" onClick={onTakeBack}>
          Take this plan back
        </button>
      </p>
    </section>
  )
}

const isDone = ({ count, logged }: Moved): boolean => logged >= count

interface LineOf {
  readonly moved: Moved
  readonly change: 'added' | 'taken out'
  readonly system: string
}

function Line({ moved, change, system }: LineOf) {
  const { taxon, count, logged } = moved
  const verb = change === 'added' ? 'came' : 'went'
  const press = `Log that ${count - logged === 1 ? 'it' : 'they'} ${verb}`
  /** The form of the log, filled in with those that are still to come or to go. */
  const log = () => {
    const typed = { change, taxon, count: String(count - logged) }
    keepStarted(nameOfStart(system, 'animals'), { typed, units: {}, when: 'now' })
    location.assign(addressOf('record', undefined, { kind: 'animals' }))
  }
  return (
    <li>
      {counted(count, nameOf(taxon))}
      {isDone(moved) ? `: ${verb}, as logged.` : logged > 0 ? `: ${logged} ${verb} so far.` : ''}{' '}
      {!isDone(moved) && (
        <button type="button" class="key" aria-label={`${press}: ${nameOf(taxon)}`} onClick={log}>
          {press}
        </button>
      )}
    </li>
  )
}
