import { useMemo } from 'preact/hooks'
import { useWidth } from '../../figure/use-width.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import type { OutlookAnswer } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { dayText } from '../days.ts'
import { plannedEvents } from '../planned.ts'
import { asToday, type Today } from '../settings.ts'
import type { Alternative } from './alternative.ts'
import { FanView, type OtherFan } from './fan-view.tsx'
import { type Subject, subjectsOf } from './subjects.ts'

export interface OutlookOf {
  readonly data: SystemData
  /** As the system is kept today. */
  readonly asked: Asked<OutlookAnswer>
  readonly today: Today
  /** Under the levers and under kept variants, to compare with. */
  readonly others: readonly Alternative[]
  /** First day of the past that is shown. */
  readonly from: number
}

/** Of the plot with its axis, pixels: what corals live in stands tall, what is watched beside it lower. */
const heights = { water: 230, beside: 170 }

/** Pixels between fans that stand side by side, as the style sheet has them. */
const gap = 32
const leastWidth = 300

/** Two stand side by side where both have room. */
const widthBeside = (width: number) => {
  const half = Math.floor((width - gap) / 2)
  return half >= leastWidth ? half : width
}

const isWater = ({ band }: Subject) => band !== undefined

/** Where nitrate, phosphate, cover and media came from and where they go, as fans. */
export function Outlook({ data, asked, today, others, from }: OutlookOf) {
  const [element, width] = useWidth<HTMLDivElement>(360)
  const { answer } = asked
  const subjects = useMemo(() => (answer ? subjectsOf(answer) : []), [answer])
  const fansOfOthers = useMemo(() => others.map((other) => fansUnder(other, data)), [others, data])
  const last = subjects[0]?.fan.days.at(-1) ?? data.asOf
  const planned = useMemo(
    () => plannedEvents({ data, today, set: asToday(today) }, last - data.asOf),
    [data, today, last],
  )
  // How far a run is changes often, and none of the pictures.
  const fans = useMemo(() => {
    const view = (subject: Subject, ofWidth: number, height: number) =>
      answer && (
        <FanView
          key={subject.key}
          subject={subject}
          others={fansOfOthers.flatMap((fans) => fans.filter((fan) => fan.subject.key === subject.key))}
          ground={{ answer, data }}
          shown={{ from, to: last }}
          planned={planned}
          width={ofWidth}
          height={height}
          hint={subject === subjects[0] ? 'Point at a day, or walk with the arrow keys.' : ''}
        />
      )
    return (
      <>
        {subjects.filter(isWater).map((subject) => view(subject, width, heights.water))}
        <div class="fans-beside">
          {subjects
            .filter((subject) => !isWater(subject))
            .map((subject) => view(subject, widthBeside(width), heights.beside))}
        </div>
      </>
    )
  }, [answer, subjects, fansOfOthers, data, from, last, planned, width])
  return (
    <section class={asked.old ? 'view old' : 'view'} aria-labelledby="outlook-title">
      <h2 id="outlook-title">Outlook</h2>
      <p class="lead">
        The upright line is {dayText(data.asOf, data.system.timeZone)}, the last day of your log: left of it
        is what was, right of it what may come if you keep to what you do. What changes fast harms corals,
        even on the way into the band. Move a lever, and its lines are drawn over the fans.
      </p>
      <Working asked={{ ...asked, old: asked.old || others.some(({ old }) => old) }} what="The outlook" />
      <div ref={element} class="fans">
        {fans}
      </div>
      <p class="caption">
        Dark band: the middle half of the tanks that fit your log. Pale band: nine of ten. The ground tone is
        where corals want it, and each box below is as full as the chance of being there in that week. Points
        are your readings with the error of their kit; a hook hangs from the limit under which your kit read
        nothing. Under the axis stands what is planned: a stroke for a water change, a box for media, a wedge
        for the rest. Lines over the fan are the levers as you set them, and variants by their letter: the
        middle, and the ends of nine of ten.
      </p>
    </section>
  )
}

function fansUnder({ mark, name, old, inHand, answer }: Alternative, data: SystemData): readonly OtherFan[] {
  const ground = { answer, data, under: { mark, name } }
  return subjectsOf(answer).map((subject) => ({ mark, old, inHand, subject, ground }))
}
