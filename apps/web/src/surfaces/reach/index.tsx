import '../../style/identify.css'
import '../../style/reach.css'
import { useMemo, useState } from 'preact/hooks'
import { addressOf } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import { questionOf } from '../../water/question.ts'
import type { Answer } from '../../worker/protocol.ts'
import { useAnswer } from '../../worker/use-answer.ts'
import { ExposedPlaces } from './exposed.tsx'
import { Grazers } from './grazers.tsx'
import { Section } from './section.tsx'
import { SurfaceView } from './surface.tsx'
import { ReachTable } from './table.tsx'

const reachIn = (told: Answer) => ('reach' in told ? told : undefined)

const mostWeeks = 4

/** What grows on every surface in the coming week, who eats it, and what to do where nobody does. */
export function Reach({ data }: { readonly data: SystemData }) {
  const [picked, setPicked] = useState<string | undefined>()
  const [weeks, setWeeks] = useState(1)
  const asked = useMemo(() => ({ kind: 'reach', outlook: questionOf(data) }) as const, [data])
  const now = useAnswer(asked, reachIn)
  const ground = now.answer && { told: now.answer, data }
  return (
    <section class="view reach" aria-labelledby="reach-title">
      <h2 id="reach-title">What grows, who eats it</h2>
      <p class="lead">
        The week after the last day of your log on every surface of your{' '}
        <a href={addressOf('record', 'letter')}>letter</a>, with the water and light of that day and the
        animals that live there.
      </p>
      <Working asked={now} what="Growth and grazing" />
      {ground && (
        <div class={now.old ? 'old' : undefined}>
          <Section
            system={data.system}
            reach={ground.told.reach}
            weeks={weeks}
            picked={ground.told.reach.grazers.find(({ taxon }) => taxon === picked)}
          />
          <p class="quiet key-of-section">
            The system cut open, to scale. What stands is what nobody eats; what is dotted is eaten off. How
            long it is says how much grows on a square metre.
          </p>
          <p class="acts">
            <label class="weeks">
              Let it grow for{' '}
              <input
                type="range"
                min={1}
                max={mostWeeks}
                step={1}
                value={weeks}
                onInput={(event) => setWeeks(Number(event.currentTarget.value))}
              />{' '}
              {weeks === 1 ? 'one week' : `${weeks} weeks at this rate`}
            </label>
          </p>
          <Grazers ground={ground} picked={picked} onPick={setPicked} />
          <ExposedPlaces ground={ground} />
          <section aria-labelledby="all-places">
            <h3 id="all-places">Place by place</h3>
            <ReachTable ground={ground} />
          </section>
          <section class="surfaces" aria-labelledby="by-surface">
            <h3 id="by-surface">Surface by surface</h3>
            <p class="line quiet">
              As your letter describes it, as you surveyed it last, and as the model has it on the last day of
              your log.
            </p>
            {data.system.surfaces.map((surface) => (
              <SurfaceView key={surface.id} surface={surface} ground={ground} />
            ))}
          </section>
        </div>
      )}
    </section>
  )
}
