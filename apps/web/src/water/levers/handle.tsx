import { useEffect, useId, useState } from 'preact/hooks'
import { plain } from '../../figure/numbers.ts'
import { type Lever, readNumber } from './read-number.ts'

export interface HandleOf extends Lever {
  readonly value: number
  readonly today: number | undefined
  readonly step: number
  /** While the handle moves. */
  readonly onMove: (value: number) => void
  /** On release, and when a typed value is entered. */
  readonly onSettle: (value: number) => void
}

/** A lever: a handle on a line with today's value marked, and the same as a number with its unit. */
export function Handle({ title, unit, value, today, min, max, step, onMove, onSettle }: HandleOf) {
  const id = useId()
  const [typed, setTyped] = useState(plain(value))
  const [issue, setIssue] = useState('')
  useEffect(() => {
    setTyped(plain(value))
    setIssue('')
  }, [value])

  const enter = () => {
    const read = readNumber({ title, unit, min, max }, typed)
    if ('issue' in read) setIssue(read.issue)
    else {
      setIssue('')
      onSettle(read.value)
    }
  }

  return (
    <div class="lever">
      <div class="lever-row">
        <div>
          <label for={`${id}-range`}>{title}</label>
          <span class="quiet">
            {today === undefined ? 'none described today' : `today ${plain(today)} ${unit}`}
          </span>
        </div>
        <span class="typed">
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            aria-label={`${title}, ${unit}`}
            aria-invalid={issue !== ''}
            aria-describedby={issue ? `${id}-issue` : undefined}
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') enter()
              if (event.key === 'Escape') setTyped(plain(value))
            }}
            onBlur={() => typed !== plain(value) && enter()}
          />
          <span aria-hidden="true"> {unit}</span>
        </span>
      </div>
      <div class="track">
        <input
          id={`${id}-range`}
          type="range"
          min={min}
          max={max}
          step={step}
          value={Math.min(max, Math.max(min, value))}
          aria-valuetext={`${plain(value)} ${unit}`}
          onInput={(event) => onMove(event.currentTarget.valueAsNumber)}
          onChange={(event) => onSettle(event.currentTarget.valueAsNumber)}
        />
        {today !== undefined && <TodayMark share={(today - min) / (max - min)} />}
      </div>
      {issue && (
        <p class="issue" id={`${id}-issue`} role="alert">
          {issue}
        </p>
      )}
    </div>
  )
}

/** Half of the thumb's width, pixels: the thumb's middle never reaches the ends of the track. */
const thumb = 14

function TodayMark({ share }: { readonly share: number }) {
  const at = Math.max(0, Math.min(1, share))
  return (
    <svg class="today-mark" width="100%" height="12" aria-hidden="true">
      <svg x={`${at * 100}%`} overflow="visible">
        <path d={`M${thumb - at * 2 * thumb},12v-8`} />
      </svg>
    </svg>
  )
}
