import { useMemo } from 'preact/hooks'
import { addressOf } from '../shell/address.ts'
import type { SystemData } from '../shell/system-data.ts'
import { Working } from '../shell/working.tsx'
import { dayText } from '../water/days.ts'
import { subjectsOf } from '../water/outlook/subjects.ts'
import { useOutlook } from '../water/outlook/use-outlook.ts'
import { questionOf } from '../water/question.ts'
import { SurfaceView } from './surface.tsx'

/** Where algae can grip, as described, as surveyed, and as the model has it on the last day of the log. */
export function Grip({ data }: { readonly data: SystemData }) {
  const asked = useMemo(() => ({ kind: 'outlook', outlook: questionOf(data) }) as const, [data])
  const { now } = useOutlook(asked, asked)
  const subjects = useMemo(() => (now.answer ? subjectsOf(now.answer) : []), [now.answer])
  const { vessels, surfaces } = data.system
  return (
    <section class="view surfaces" aria-labelledby="surfaces-title">
      <h2 id="surfaces-title">Surface by surface</h2>
      <p class="lead">
        Each surface as your <a href={addressOf('record', 'letter')}>letter</a> has it, with the cover that
        was surveyed and the cover that the model gives it on {dayText(data.asOf, data.system.timeZone)}, the
        last day of your log.
      </p>
      <Working asked={now} what="Cover" />
      {vessels.map(({ id }) => {
        const within = surfaces.filter(({ vessel }) => vessel === id)
        return (
          within.length > 0 && (
            <section key={id} aria-labelledby={`vessel-${id}`}>
              {vessels.length > 1 && (
                <h3 class="vessel" id={`vessel-${id}`}>
                  In the {id}
                </h3>
              )}
              {within.map((surface) => (
                <SurfaceView
                  key={surface.id}
                  surface={surface}
                  data={data}
                  subjects={subjects.filter(({ fan }) => fan.surface === surface.id)}
                  ground={now.answer && { answer: now.answer, data }}
                />
              ))}
            </section>
          )
        )
      })}
    </section>
  )
}
