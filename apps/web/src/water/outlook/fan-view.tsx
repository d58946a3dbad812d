import { useState } from 'preact/hooks'
import { Says } from '../../figure/says.tsx'
import { sentenceText } from '../../figure/sentence.ts'
import { fromAddress } from '../../shell/address.ts'
import type { Span } from '../../worker/answers.ts'
import { dayText, shortDayText } from '../days.ts'
import { ceilingOf, drawFan } from './fan.ts'
import { fanFigure, type OutlookGround, stepAt } from './figures.ts'
import { FanPicture } from './picture.tsx'
import type { Subject } from './subjects.ts'
import { FanTable } from './table.tsx'
import { fanSentence } from './words.ts'

export interface FanViewOf {
  readonly subject: Subject
  /** The same under today's husbandry, while a lever is moved. */
  readonly before: Subject | undefined
  readonly ground: OutlookGround
  readonly shown: Span
  readonly changes: readonly number[]
  readonly width: number
}

/** One fan: picture, sentence, table, and a line that walks from day to day with the arrow keys or a finger. */
export function FanView({ subject, before, ground, shown, changes, width }: FanViewOf) {
  const [step, setStep] = useState(() => stepNamed(subject, ground))
  const [asTable, setAsTable] = useState(false)
  const { asOf } = ground.answer.outlook
  const zone = ground.data.system.timeZone
  const ceiling = Math.max(ceilingOf(subject, shown), before ? ceilingOf(before, shown) : 0)
  const drawing = drawFan({ subject, before, shown, asOf, changes, width, ceiling })
  const days = subject.fan.days
  const walk = (by: number) => setStep(inShown((step ?? stepAt(subject, asOf)) + by, days, shown))
  const sentence = fanSentence(subject, ground, before !== undefined)
  const day = step === undefined ? undefined : days[step]
  return (
    <figure class="fan-view">
      <h3>{subject.title}</h3>
      <Says sentence={sentence} />
      <div
        class="walkable"
        role="group"
        // The picture is walked with arrow keys, so it must take the focus.
        tabIndex={0}
        aria-label={`${subject.title}: arrow keys go from day to day, T shows the table`}
        onKeyDown={(event) => {
          if (event.key === 'ArrowRight') walk(1)
          else if (event.key === 'ArrowLeft') walk(-1)
          else if (event.key === 't' && !event.ctrlKey && !event.metaKey && !event.altKey)
            setAsTable(!asTable)
          else return
          event.preventDefault()
        }}
        onPointerMove={(event) => setStep(stepAtPointer(event, drawing.x, days, shown))}
        onPointerDown={(event) => setStep(stepAtPointer(event, drawing.x, days, shown))}
      >
        <FanPicture
          subject={subject}
          drawing={drawing}
          label={sentenceText(sentence)}
          dayText={(at) => shortDayText(at, zone)}
          cursor={day === undefined ? undefined : drawing.x(day)}
        />
      </div>
      <div class="readout" aria-live="polite">
        {step === undefined || day === undefined ? (
          <p class="line quiet">Point at a day, or walk with the arrow keys.</p>
        ) : (
          <Says sentence={[`${dayText(day, zone)}: `, fanFigure(subject, step, ground)]} />
        )}
      </div>
      <button type="button" class="key" aria-expanded={asTable} onClick={() => setAsTable(!asTable)}>
        {asTable ? 'Put the table away' : 'Show as a table'}
      </button>
      {asTable && <FanTable subject={subject} shown={shown} ground={ground} />}
    </figure>
  )
}

/** The day whose figure the address names. */
function stepNamed(subject: Subject, ground: OutlookGround): number | undefined {
  const why = fromAddress('why')
  if (why === null || !why.startsWith(`fan.${subject.key}.`)) return undefined
  const found = subject.fan.days.findIndex((_, step) => fanFigure(subject, step, ground).id === why)
  return found < 0 ? undefined : found
}

function inShown(step: number, days: readonly number[], shown: Span): number {
  const first = days.findIndex((day) => day >= shown.from)
  let last = days.length - 1
  while (last > first && (days[last] ?? 0) > shown.to) last -= 1
  return Math.max(first, Math.min(last, step))
}

function stepAtPointer(
  event: PointerEvent,
  x: (day: number) => number,
  days: readonly number[],
  shown: Span,
): number {
  const box = (event.currentTarget as HTMLElement).getBoundingClientRect()
  const at = event.clientX - box.left
  let best = 0
  days.forEach((day, i) => {
    if (Math.abs(x(day) - at) < Math.abs(x(days[best] ?? 0) - at)) best = i
  })
  return inShown(best, days, shown)
}
