import { useMemo } from 'preact/hooks'
import { useWidth } from '../../figure/use-width.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import type { OutlookAnswer, Span } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { plannedWaterChanges, type Routine } from '../planned.ts'
import { FanView } from './fan-view.tsx'
import { keyOf, subjectsOf } from './subjects.ts'

export interface OutlookOf {
  readonly data: SystemData
  readonly asked: Asked<OutlookAnswer>
  /** Under today's husbandry, to compare with; absent while no lever is moved. */
  readonly today: OutlookAnswer | undefined
  readonly routine: Routine | undefined
  /** First day of the past that is shown. */
  readonly from: number
}

/** Where nitrate, phosphate and cover came from and where they go, as fans. */
export function Outlook({ data, asked, today, routine, from }: OutlookOf) {
  const [element, width] = useWidth<HTMLDivElement>(360)
  const { answer } = asked
  const subjects = useMemo(() => (answer ? subjectsOf(answer) : []), [answer])
  const compared = useMemo(() => (today ? subjectsOf(today) : []), [today])
  const last = subjects[0]?.fan.days.at(-1) ?? data.asOf
  const shown: Span = { from, to: last }
  const changes = plannedWaterChanges(data.events, routine, data.asOf, last - data.asOf)
  return (
    <section class={asked.old ? 'view old' : 'view'} aria-labelledby="outlook-title">
      <h2 id="outlook-title">Outlook</h2>
      <p class="lead">
        Left of the upright line is what was, right of it what may come, if you keep to what the levers say.
      </p>
      <Working asked={asked} what="The outlook" />
      <div ref={element} class="fans">
        {answer &&
          subjects.map((subject) => (
            <FanView
              key={subject.key}
              subject={subject}
              before={compared.find((candidate) => keyOf(candidate.fan) === subject.key)}
              ground={{ answer, data }}
              shown={shown}
              changes={changes}
              width={width}
            />
          ))}
      </div>
      <p class="caption">
        Dark band: the middle half of the tanks that fit your log. Pale band: nine of ten. The ground tone is
        where corals want it. Points are your readings with the error of their kit; a hook hangs from the
        limit under which your kit read nothing. Short ticks under the axis: water changes to come.
      </p>
    </section>
  )
}
