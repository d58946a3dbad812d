import { useEffect, useMemo, useState } from 'preact/hooks'
import { Says } from '../../figure/says.tsx'
import { useWidth } from '../../figure/use-width.ts'
import { fromAddress } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import type { LedgerAnswer, Span } from '../../worker/answers.ts'
import { dayText } from '../days.ts'
import { firstMembersOver, questionOf } from '../question.ts'
import { type SpanChoice, spanOf } from '../span.ts'
import type { LedgerGround } from './derivations.ts'
import { keptPlaces } from './places.ts'
import { RiverView } from './river-view.tsx'
import { drawRiver, tides, widthOfFed } from './rivers.ts'
import { pictured, type River, riverOf } from './streams.ts'
import { LedgerTable } from './table.tsx'
import { useLedger } from './use-ledger.ts'
import type { Spot } from './walk.ts'
import { threeThings } from './words.ts'

interface LedgerOf {
  readonly data: SystemData
  readonly choice: SpanChoice
  readonly onAnswer: (answer: LedgerAnswer) => void
}

/** The budget of N and P over a span: rivers, three sentences, and all of it as a table. */
export function Ledger({ data, choice, onAnswer }: LedgerOf) {
  const question = useMemo(() => {
    const span = spanOf(choice, data)
    return { kind: 'ledger', outlook: questionOf(data), firstMembers: firstMembersOver(span), span } as const
  }, [data, choice])
  const asked = useLedger(question)
  // Rows stand in the table alone.
  const [asTable, setAsTable] = useState(() => fromAddress('why')?.startsWith('row.') ?? false)
  useEffect(() => {
    if (asked.answer) onAnswer(asked.answer)
  }, [asked.answer, onAnswer])
  const { answer } = asked
  // How far a run is changes often, and none of the pictures.
  const body = useMemo(
    () =>
      answer && (
        <LedgerBody ground={{ answer, data }} asTable={asTable} onTable={() => setAsTable(!asTable)} />
      ),
    [answer, data, asTable],
  )
  return (
    <section class={asked.old ? 'view old' : 'view'} aria-labelledby="ledger-title">
      <h2 id="ledger-title">Ledger</h2>
      <p class="lead">
        What came in, what left and what stayed, {daysOf(question.span, data.system.timeZone)}.
      </p>
      <Working asked={asked} what="The ledger" />
      {body}
    </section>
  )
}

/** "from 1 Mar 2026 to 8 Apr 2026", or "on 1 Mar 2026" where a log has but one day. */
function daysOf({ from, to }: Span, timeZone: string): string {
  const [first, last] = [dayText(from, timeZone), dayText(to, timeZone)]
  return first === last ? `on ${first}` : `from ${first} to ${last}`
}

interface Body {
  readonly ground: LedgerGround
  readonly asTable: boolean
  readonly onTable: () => void
}

function LedgerBody({ ground, asTable, onTable }: Body) {
  const rivers = useMemo(
    () => pictured.map((atom) => riverOf(ground.answer.ledger, atom, keptPlaces(ground.data.events))),
    [ground.answer, ground.data],
  )
  return (
    <>
      <div class="worth-knowing">
        {threeThings(rivers, ground).map((sentence, i) => (
          <Says key={i} sentence={sentence} />
        ))}
      </div>
      <button type="button" class="key" aria-expanded={asTable} onClick={onTable}>
        {asTable ? 'Show the ledger as rivers' : 'Show the ledger as a table'}
      </button>
      {asTable ? (
        <LedgerTable rivers={rivers} ground={ground} />
      ) : (
        <Rivers rivers={rivers} ground={ground} onTable={onTable} />
      )}
    </>
  )
}

interface RiversOf {
  readonly rivers: readonly River[]
  readonly ground: LedgerGround
  readonly onTable: () => void
}

function Rivers({ rivers, ground, onTable }: RiversOf) {
  const [element, width] = useWidth<HTMLDivElement>(360)
  const [spot, setSpot] = useState<Spot | undefined>()
  const perFed = widthOfFed(rivers, width)
  const { above, below } = tides(rivers, perFed)
  return (
    <>
      <div class="rivers">
        {rivers.map((river, i) => (
          <div key={river.atom} {...(i === 0 ? { ref: element } : {})}>
            <RiverView
              river={river}
              drawing={drawRiver(river, width, perFed, above, below)}
              ground={ground}
              spot={spot}
              onSpot={setSpot}
              onTable={onTable}
              hint={i === 0 ? 'Point at a stream, or walk with the arrow keys.' : ''}
            />
          </div>
        ))}
      </div>
      <p class="caption">
        The same width is the same share of what you fed, in both pictures. Blocks over the line: the system
        holds more of it than at the start; under the line: less. Pale banks reach to the end of the interval,
        a dotted thread is too thin to draw.
      </p>
    </>
  )
}
