import { today, type When } from './when.ts'

interface WhenFieldOf {
  /** Of the day; what belongs to it has ids that begin so. */
  readonly id: string
  readonly when: When
  readonly timeZone: string
  readonly onWhen: (when: When) => void
  /** The date is wanting or none of the calendar. */
  readonly issue: string | undefined
}

/** The day of an entry, and its time where that is known. */
export function WhenField({ id, when, timeZone, onWhen, issue }: WhenFieldOf) {
  const isElsewhere = Intl.DateTimeFormat().resolvedOptions().timeZone !== timeZone
  return (
    <div class="blank-field">
      <div class="choice in-line" role="radiogroup" aria-labelledby={`${id}-label`}>
        <span class="legend-words" id={`${id}-label`}>
          When
        </span>
        <div class="options">
          <label>
            <input
              type="radio"
              name={`${id}-choice`}
              checked={when === 'now'}
              onChange={() => onWhen('now')}
            />
            <span>now</span>
          </label>
          <label>
            <input
              type="radio"
              name={`${id}-choice`}
              checked={when !== 'now'}
              onChange={() => onWhen({ date: today(timeZone, new Date()), time: '' })}
            />
            <span>on another day or time</span>
          </label>
        </div>
      </div>
      {when !== 'now' && (
        <div class="day-and-time">
          <div class="blank">
            <label for={id}>Day</label>
            <span class="typed">
              <input
                id={id}
                type="date"
                required
                aria-invalid={issue !== undefined}
                aria-describedby={`${id}-hint`}
                value={when.date}
                onInput={(event) => onWhen({ ...when, date: event.currentTarget.value })}
              />
            </span>
          </div>
          <div class="blank">
            <label for={`${id}-time`}>
              Time <span class="quiet">(if you know it)</span>
            </label>
            <span class="typed">
              <input
                id={`${id}-time`}
                type="time"
                aria-describedby={`${id}-hint`}
                value={when.time}
                onInput={(event) => onWhen({ ...when, time: event.currentTarget.value })}
              />
            </span>
          </div>
        </div>
      )}
      <p class={issue ? 'issue' : 'quiet hint'} id={`${id}-hint`}>
        {issue ?? (isElsewhere ? `By the clock of the system, ${timeZone}.` : '')}
      </p>
    </div>
  )
}
