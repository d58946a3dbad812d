import type { Rung } from '@holdfast/ladder'
import { Cautions } from '../identify/cautions.tsx'

interface RungOf {
  readonly rung: Rung
  /** Open at once: the one that comes next. */
  readonly isNext: boolean
  readonly date: (day: number) => string
  readonly onBegin: () => void
}

/** One measure: its cautions, then what to do, and then how long, how one sees it and how it ends. */
export function RungView({ rung, isNext, date, onBegin }: RungOf) {
  const { title, cautions, how, animals, prepare, effect, evidence, days, judgedOn } = rung
  const { seen, stop, ends, risks } = rung
  return (
    <li>
      <details open={isNext}>
        <summary>
          <b>{title}</b> <span class="quiet">give it until {date(judgedOn)} before you judge it</span>
        </summary>
        <Cautions cautions={cautions} inFull />
        <p class="line">{how}</p>
        {animals.length > 0 && (
          <p class="line">
            Here:{' '}
            {animals.map(({ taxon, tradeName }, at) => (
              <span key={taxon}>
                {at > 0 && ', '}
                {tradeName} (<i>{taxon}</i>)
              </span>
            ))}
            .
          </p>
        )}
        <dl>
          <dt>Have ready</dt>
          <dd>{prepare}</dd>
          <dt>What it does</dt>
          <dd>
            {effect} <span class="quiet">Known by {evidence}.</span>
          </dd>
          <dt>Time</dt>
          <dd>{days.low === days.high ? `${days.high}` : `${days.low} to ${days.high}`} days.</dd>
          <dt>How you see it</dt>
          <dd>{seen}</dd>
          {stop !== undefined && (
            <>
              <dt>Stop sign</dt>
              <dd>{stop}</dd>
            </>
          )}
          <dt>It ends</dt>
          <dd>{ends}</dd>
          <dt>Risks</dt>
          <dd class="sentence">{risks}.</dd>
        </dl>
        <p class="acts">
          <button type="button" class="large" onClick={onBegin}>
            Write into the log that I begin this
          </button>
        </p>
      </details>
    </li>
  )
}
