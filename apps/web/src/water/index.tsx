import '../style/levers.css'
import { mayBeStartingUp } from '@holdfast/commissioning/age'
import { useMemo, useState } from 'preact/hooks'
import { addressOf, fromAddress, intoAddress } from '../shell/address.ts'
import { Kept } from '../shell/header.tsx'
import { NotModelled } from '../shell/not-modelled.tsx'
import type { SystemData } from '../shell/system-data.ts'
import type { LedgerAnswer } from '../worker/answers.ts'
import { Ledger } from './ledger/index.tsx'
import { Levers } from './levers/index.tsx'
import type { Alternative } from './outlook/alternative.ts'
import { Outlook } from './outlook/index.tsx'
import { useOutlook } from './outlook/use-outlook.ts'
import { questionOf } from './question.ts'
import { RestsOn } from './rests/index.tsx'
import { isSame, leversOf, type Settings } from './settings.ts'
import { isSpanChoice, type SpanChoice, spanChoices, spanOf, spanWords } from './span.ts'
import { useLevers } from './use-levers.ts'
import { Compare } from './variants/compare.tsx'
import { Variants } from './variants/index.tsx'

/** The place "Water": ledger, outlook, the levers beside it, and variants compared. */
export function Water({ data }: { readonly data: SystemData }) {
  const [choice, setChoice] = useState<SpanChoice>(() => chosenSpan())
  const [ledger, setLedger] = useState<LedgerAnswer | undefined>()
  const { today, set, isMoved, move, settle, variants, keepVariants } = useLevers(data)

  const base = useMemo(() => ({ kind: 'outlook', outlook: questionOf(data) }) as const, [data])
  const under = (settings: Settings) =>
    ({ kind: 'outlook', outlook: questionOf(data, leversOf(settings, today)) }) as const
  const asked = useMemo(() => (isMoved ? under(set) : base), [base, set, isMoved])
  const kept = useMemo(() => variants.map((variant) => under(variant.set)), [base, variants])
  const outlook = useOutlook(base, asked, kept)

  const inHand = isMoved ? outlook.now : undefined
  const others = useMemo((): readonly Alternative[] => {
    const answered = variants.flatMap((variant, i) => {
      const answer = outlook.kept[i]
      return answer
        ? [{ ...variant, name: `“${variant.name}”`, answer, old: false, inHand: isSame(variant.set, set) }]
        : []
    })
    const isKept = answered.some((variant) => variant.inHand)
    if (!inHand?.answer || isKept) return answered
    const { answer, old } = inHand
    const levers = {
      mark: 'levers',
      name: 'the levers as you set them',
      set,
      answer,
      old,
      inHand: true,
    } as const
    return [levers, ...answered]
  }, [inHand?.answer, inHand?.old, variants, ...outlook.kept, inHand?.old ? undefined : set])

  const rests = fromAddress('rests')
  const from = spanOf(choice, data).from
  const { answer, old, working, issue } = outlook.today
  // A handle that moves draws itself; the fans are drawn when there are new numbers for them.
  const fans = useMemo(
    () => <Outlook data={data} asked={outlook.today} today={today} others={others} from={from} />,
    [data, answer, old, working, issue, today, others, from],
  )
  const compared = useMemo(
    () =>
      answer && others.length > 0 ? (
        <Compare data={data} today={today} answer={answer} others={others} />
      ) : null,
    [data, today, answer, others],
  )
  const rivers = useMemo(() => <Ledger data={data} choice={choice} onAnswer={setLedger} />, [data, choice])
  return (
    <>
      <Kept data={data} />
      <nav aria-label="On this page">
        <a href="#ledger-title">Ledger</a>
        <a href="#outlook-title">Outlook</a>
        <a href="#not-modelled">Not modelled yet</a>
        {mayBeStartingUp(data.system, data) && <a href={addressOf('water', 'start-up')}>Start-up</a>}
      </nav>
      <SpanChoiceOf
        choice={choice}
        onChoice={(next) => {
          intoAddress({ span: next })
          setChoice(next)
        }}
      />
      {rests !== null && <RestsOn id={rests} data={data} ledger={ledger} outlook={answer} />}
      {rivers}
      <div class="outlook-and-levers">
        {fans}
        <div class="beside">
          <Levers system={data.system} today={today} set={set} onMove={move} onSettle={settle} />
          <Variants
            today={today}
            set={set}
            isMoved={isMoved}
            variants={variants}
            onChange={keepVariants}
            onSet={settle}
          />
        </div>
      </div>
      {compared}
      <NotModelled ledger={ledger} outlook={answer} remarks={data.remarks} />
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
