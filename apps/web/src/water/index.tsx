import { useMemo, useState } from 'preact/hooks'
import { fromAddress, intoAddress } from '../shell/address.ts'
import { Kept } from '../shell/header.tsx'
import { NotModelled } from '../shell/not-modelled.tsx'
import type { SystemData } from '../shell/system-data.ts'
import type { LedgerAnswer } from '../worker/answers.ts'
import { Ledger } from './ledger/index.tsx'
import { Levers } from './levers/index.tsx'
import { Outlook } from './outlook/index.tsx'
import { useOutlook } from './outlook/use-outlook.ts'
import { type Routine, routineOf } from './planned.ts'
import { questionOf } from './question.ts'
import { RestsOn } from './rests/index.tsx'
import { isSpanChoice, type SpanChoice, spanChoices, spanOf, spanWords } from './span.ts'

/** The place "Water": ledger, outlook and the lever under it. */
export function Water({ data }: { readonly data: SystemData }) {
  const [choice, setChoice] = useState<SpanChoice>(() => chosenSpan())
  const [ledger, setLedger] = useState<LedgerAnswer | undefined>()
  const today = useMemo(() => routineOf(data.system), [data])
  const start = today ?? { volume_L: 0, every_days: 7 }
  const [set, setSet] = useState<Routine>(() => routineInAddress(start))
  const moved = set.volume_L !== start.volume_L || set.every_days !== start.every_days

  const base = useMemo(() => ({ kind: 'outlook', outlook: questionOf(data) }) as const, [data])
  const asked = useMemo(
    () => (moved ? ({ kind: 'outlook', outlook: questionOf(data, { waterChange: set }) } as const) : base),
    [base, data, moved, set],
  )
  const { now, today: unmoved } = useOutlook(base, asked)

  const rests = fromAddress('rests')
  const settle = (routine: Routine) => {
    setSet(routine)
    const same = routine.volume_L === start.volume_L && routine.every_days === start.every_days
    intoAddress({
      volume: same ? undefined : String(routine.volume_L),
      every: same ? undefined : String(routine.every_days),
    })
  }
  return (
    <>
      <Kept data={data} />
      <nav aria-label="On this page">
        <a href="#ledger-title">Ledger</a>
        <a href="#outlook-title">Outlook</a>
        <a href="#not-modelled">Not modelled yet</a>
      </nav>
      <SpanChoiceOf
        choice={choice}
        onChoice={(next) => {
          intoAddress({ span: next })
          setChoice(next)
        }}
      />
      {rests !== null && <RestsOn id={rests} data={data} ledger={ledger} outlook={now.answer} />}
      <Ledger data={data} choice={choice} onAnswer={setLedger} />
      <div class="outlook-and-levers">
        <Outlook
          data={data}
          asked={now}
          today={unmoved}
          routine={moved ? set : today}
          from={spanOf(choice, data).from}
        />
        <Levers
          system={data.system}
          today={today}
          set={set}
          onMove={setSet}
          onSettle={settle}
          onBack={() => settle(start)}
        />
      </div>
      <NotModelled ledger={ledger} outlook={now.answer} remarks={data.remarks} />
    </>
  )
}

function SpanChoiceOf({
  choice,
  onChoice,
}: {
  readonly choice: SpanChoice
  readonly onChoice: (choice: SpanChoice) => void
}) {
  return (
    <fieldset class="span">
      <legend>How far back you look</legend>
      {spanChoices.map((option) => (
        <label key={option}>
          <input type="radio" name="span" checked={option === choice} onChange={() => onChoice(option)} />
          <span>{spanWords[option]}</span>
        </label>
      ))}
    </fieldset>
  )
}

function chosenSpan(): SpanChoice {
  const said = fromAddress('span')
  return isSpanChoice(said) ? said : '90'
}

function routineInAddress(start: Routine): Routine {
  const volume_L = Number(fromAddress('volume') ?? Number.NaN)
  const every_days = Number(fromAddress('every') ?? Number.NaN)
  return {
    volume_L: volume_L >= 0 ? volume_L : start.volume_L,
    every_days: every_days >= 1 ? every_days : start.every_days,
  }
}
