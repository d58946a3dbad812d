import { issueInWords, type MomentRead } from '@holdfast/logbook'
import { today, type When, withOffset } from './when.ts'

interface WhenFieldOf {
  /** Of the day; what belongs to it has ids that begin so. */
  readonly id: string
  readonly when: When
  readonly timeZone: string
  /** What came of reading it; undefined until it was read. */
  readonly read: MomentRead | undefined
  readonly onWhen: (when: When) => void
  /** Which of two hours it was is said, so that the entry can be logged. */
  readonly onAnswer: (when: When) => void
}

/** The day of an entry, and its time where that is known. */
export function WhenField({ id, when, timeZone, read, onWhen, onAnswer }: WhenFieldOf) {
  const isElsewhere = Intl.DateTimeFormat().resolvedOptions().timeZone !== timeZone
  const issues = read && 'issues' in read ? read.issues.map(issueInWords).join(' ') : ''
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
            <input
              id={id}
              type="date"
              required
              aria-invalid={issues !== ''}
              aria-describedby={`${id}-hint`}
              value={when.date}
              onInput={(event) => onWhen({ date: event.currentTarget.value, time: when.time })}
            />
          </div>
          <div class="blank">
            <label for={`${id}-time`}>
              Time <span class="quiet">(if you know it)</span>
            </label>
            <input
              id={`${id}-time`}
              type="time"
              aria-describedby={`${id}-hint`}
              value={when.time}
              onInput={(event) => onWhen({ date: when.date, time: event.currentTarget.value })}
            />
          </div>
        </div>
      )}
      <p class={issues === '' ? 'quiet hint' : 'issue'} id={`${id}-hint`}>
        {issues || (isElsewhere ? `By the clock of the system, ${timeZone}.` : '')}
      </p>
      {when !== 'now' && read && 'question' in read && (
        <div class="question">
          <p>{read.question.question}</p>
          <div class="units">
            {read.question.options.map(({ value, words }) => (
              <button
                key={value}
                type="button"
                class="large"
                onClick={() => onAnswer(withOffset(when, value))}
              >
                {words}
              </button>
            ))}
          </div>
        </div>
      )}
    </div>
  )
}
