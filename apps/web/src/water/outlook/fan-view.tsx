import { useMemo, useState } from 'preact/hooks'
import { Says } from '../../figure/says.tsx'
import { sentenceText } from '../../figure/sentence.ts'
import { fromAddress } from '../../shell/address.ts'
import type { Span } from '../../worker/answers.ts'
import { shortDayText } from '../days.ts'
import type { Planned } from '../planned.ts'
import type { Alternative } from './alternative.ts'
import { ceilingOf, drawFan } from './fan.ts'
import { fanFigure, type OutlookGround, stepAt } from './figures.ts'
import { FanPicture } from './picture.tsx'
import { Readout } from './readout.tsx'
import type { Subject } from './subjects.ts'
import { FanTable } from './table.tsx'
import { inShown, readingNear, stepAtPointer } from './walk.ts'
import { fanSentence, otherSentence } from './words.ts'

/** The same subject under other levers. */
export interface OtherFan extends Pick<Alternative, 'mark' | 'old' | 'inHand'> {
  readonly subject: Subject
  readonly ground: OutlookGround
}

export interface FanViewOf {
  readonly subject: Subject
  readonly others: readonly OtherFan[]
  readonly ground: OutlookGround
  readonly shown: Span
  readonly planned: readonly Planned[]
  readonly width: number
  readonly height: number
  readonly hint: string
}

/** One fan: picture, sentence, table, and a line that walks from day to day with the arrow keys or a finger. */
export function FanView({ subject, others, ground, shown, planned, width, height, hint }: FanViewOf) {
  const [step, setStep] = useState(() => stepNamed(subject, ground))
  const [asTable, setAsTable] = useState(false)
  const { asOf } = ground.answer.outlook
  const zone = ground.data.system.timeZone
  // That an outline is of old settings changes its ink, and no line of it.
  const drawing = useMemo(() => {
    const ceiling = Math.max(
      ...[subject, ...others.map((other) => other.subject)].map((one) => ceilingOf(one, shown)),
    )
    return drawFan({ subject, others, shown, asOf, planned, width, height, ceiling })
  }, [
    subject,
    ...others.flatMap((other) => [other.mark, other.subject]),
    shown.from,
    shown.to,
    asOf,
    planned,
    width,
    height,
  ])
  const days = subject.fan.days
  const at = step ?? stepAt(subject, asOf)
  const keys: Readonly<Record<string, () => void>> = {
    ArrowRight: () => setStep(inShown(at + 1, days, shown)),
    ArrowLeft: () => setStep(inShown(at - 1, days, shown)),
    PageDown: () => setStep(readingNear(subject, at, 1, shown)),
    PageUp: () => setStep(readingNear(subject, at, -1, shown)),
    Home: () => setStep(inShown(0, days, shown)),
    End: () => setStep(inShown(days.length, days, shown)),
    t: () => setAsTable(!asTable),
  }
  const sentence = fanSentence(subject, ground)
  const day = step === undefined ? undefined : days[step]
  return (
    <figure class="fan-view">
      <h3>{subject.title}</h3>
      <div
        class="walkable"
        role="group"
        // The picture is walked with arrow keys, so it must take the focus.
        tabIndex={0}
        aria-label={`${subject.title}: arrow keys go from day to day, Page Up and Page Down from reading to reading, T shows the table`}
        onKeyDown={(event) => {
          const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key]
          if (!act) return
          act()
          event.preventDefault()
        }}
        onPointerMove={(event) => setStep(stepAtPointer(event, drawing.x, days, shown))}
        onPointerDown={(event) => setStep(stepAtPointer(event, drawing.x, days, shown))}
      >
        <FanPicture
          subject={subject}
          drawing={drawing}
          label={sentenceText(sentence)}
          dayText={(of) => shortDayText(of, zone, shown)}
          old={others.filter(({ old }) => old).map(({ mark }) => mark)}
          cursor={day === undefined ? undefined : drawing.x(day)}
        />
      </div>
      <div class="under-picture">
        <Readout
          subject={subject}
          others={others}
          ground={ground}
          planned={planned}
          step={step}
          hint={hint}
        />
        <button type="button" class="key" aria-expanded={asTable} onClick={() => setAsTable(!asTable)}>
          {asTable ? 'Put the table away' : 'As a table'}
        </button>
      </div>
      <Says sentence={sentence} />
      {others
        .filter(({ inHand }) => inHand)
        .map((other) => (
          <div key={other.mark} class={other.old ? 'outline-old' : undefined}>
            <Says sentence={otherSentence(other.subject, other.ground)} />
          </div>
        ))}
      {asTable && <FanTable subject={subject} others={others} shown={shown} ground={ground} />}
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
