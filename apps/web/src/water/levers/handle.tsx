import { useEffect, useId, useState } from 'preact/hooks'
import { plain } from '../../figure/numbers.ts'
import type { HandleOfLever, Reach } from './lever.ts'
import { inUnit, keptOf, readNumber, shown, shownReach, shownUnit } from './read-number.ts'

export interface HandleOf {
  readonly of: HandleOfLever
  readonly reach: Reach
  readonly value: number
  readonly today: number | undefined
  /** What a step up takes or saves, in words. */
  readonly costs: string
  /** While the handle moves. */
  readonly onMove: (value: number) => void
  /** On release, and when a typed value is entered. */
  readonly onSettle: (value: number) => void
}

/** A handle on a line with today's value marked, the same as a number with its unit, and what a step costs. */
export function Handle({ of, reach, value, today, costs, onMove, onSettle }: HandleOf) {
  const id = useId()
  const { title, measure } = of
  const unit = shownUnit(measure)
  const inWords = plain(shown(measure, value))
  const [typed, setTyped] = useState(inWords)
  const [issue, setIssue] = useState('')
  useEffect(() => {
    setTyped(inWords)
    setIssue('')
  }, [inWords])

  const enter = () => {
    const read = readNumber(of, reach, typed)
    if ('issue' in read) setIssue(read.issue)
    else {
      setIssue('')
      onSettle(read.value)
    }
  }
  const { min, max, step } = shownReach(measure, reach)

  return (
    <div class="lever">
      <div class="lever-row">
        <label for={`${id}-range`}>{title}</label>
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
              if (event.key === 'Escape') setTyped(inWords)
            }}
            onBlur={() => typed !== inWords && enter()}
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
          value={Math.min(max, Math.max(min, shown(measure, value)))}
          aria-valuetext={inUnit(measure, value)}
          aria-describedby={`${id}-costs`}
          onInput={(event) => onMove(keptOf(measure, event.currentTarget.valueAsNumber))}
          onChange={(event) => onSettle(keptOf(measure, event.currentTarget.valueAsNumber))}
        />
        {today !== undefined && <TodayMark share={(shown(measure, today) - min) / (max - min)} />}
      </div>
      <p class="costs" id={`${id}-costs`}>
        {today === undefined ? 'Today: no plan.' : `Today: ${inUnit(measure, today)}.`} {costs}
      </p>
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
