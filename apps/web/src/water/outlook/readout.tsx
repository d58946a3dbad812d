import { Says } from '../../figure/says.tsx'
import type { Sentence } from '../../figure/sentence.ts'
import { dayText } from '../days.ts'
import type { Planned } from '../planned.ts'
import { letterOf } from './alternative.ts'
import type { OtherFan } from './fan-view.tsx'
import { fanFigure, type OutlookGround } from './figures.ts'
import { readIn } from './read-in.ts'
import type { Subject } from './subjects.ts'

interface ReadoutOf {
  readonly subject: Subject
  readonly others: readonly OtherFan[]
  readonly ground: OutlookGround
  readonly planned: readonly Planned[]
  readonly step: number | undefined
  /** How to point at a day, while nobody does. */
  readonly hint: string
}

/** What the fan shows on the day one points at: the figure, what was read, what is planned, and the variants. */
export function Readout(of: ReadoutOf) {
  return (
    <div class="readout" aria-live="polite">
      {of.step === undefined ? (
        <p class="line quiet how-to-walk">{of.hint}</p>
      ) : (
        <Says sentence={onDay(of, of.step)} />
      )}
    </div>
  )
}

function onDay({ subject, others, ground, planned }: ReadoutOf, step: number): Sentence {
  const day = subject.fan.days[step] ?? ground.answer.outlook.asOf
  const read = readIn(subject, day)
  const plans = planned.filter((one) => Math.floor(one.day) === Math.floor(day)).map(({ says }) => says)
  const under =
    day > ground.answer.outlook.asOf
      ? others.flatMap((other): Sentence => {
          const name = letterOf(other) || 'with the levers'
          return [`; ${name} `, fanFigure(other.subject, step, other.ground)]
        })
      : []
  return [
    `${dayText(day, ground.data.system.timeZone)}: `,
    fanFigure(subject, step, ground),
    ...under,
    ...(read ? [`; you read ${read}`] : []),
    ...(plans.length > 0 ? [`. ${plans.join(', ')}`] : []),
  ]
}
