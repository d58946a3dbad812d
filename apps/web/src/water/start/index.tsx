import '../../style/identify.css'
import '../../style/start.css'
import { mayBeStartingUp } from '@holdfast/commissioning/age'
import { avoidedWords, deedWords, type Told, verdictWords, type Writing } from '@holdfast/commissioning/words'
import { useMemo } from 'preact/hooks'
import { plain } from '../../figure/numbers.ts'
import { addressOf } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import type { StartUpTold } from '../../worker/answers.ts'
import type { Answer } from '../../worker/protocol.ts'
import { useAnswer } from '../../worker/use-answer.ts'
import { dayText } from '../days.ts'
import { questionOf } from '../question.ts'
import { Conditions } from './conditions.tsx'
import { Timeline } from './timeline.tsx'
import { peakSentence } from './words.ts'

const startUpIn = (told: Answer) => ('startUp' in told ? told.startUp : undefined)

/** How the start-up of a new tank stands: what comes when, what to do and not to do, and what is still to be shown. */
export function StartUp({ data }: { readonly data: SystemData }) {
  const isYoung = mayBeStartingUp(data.system, data)
  const asked = useMemo(
    () => (isYoung ? ({ kind: 'start-up', outlook: questionOf(data) } as const) : undefined),
    [data, isYoung],
  )
  const now = useAnswer(asked, startUpIn)
  return (
    <>
      <nav aria-label="Water">
        <a href={addressOf('water')}>Ledger and outlook</a>
        <a href={addressOf('water', 'start-up')} aria-current="page">
          Start-up
        </a>
      </nav>
      <section class={now.old ? 'view start-up old' : 'view start-up'} aria-labelledby="start-up-title">
        <h2 id="start-up-title">Start-up</h2>
        <p class="lead">
          How far the bacteria of a new tank are, what comes next, and when the first animals may come.
        </p>
        {!isYoung && (
          <p class="verdict">
            The start-up of this system is over, as far as its letter says. If it is new, say there since when
            its glass and sand have been wet: <a href={addressOf('record', 'letter')}>its letter</a>.
          </p>
        )}
        <Working asked={now} what="The start-up" />
        {now.answer && <StartUpAnswer answer={now.answer} data={data} />}
      </section>
    </>
  )
}

interface AnswerOf {
  readonly answer: StartUpTold['startUp']
  readonly data: SystemData
}

function StartUpAnswer({ answer, data: { system, remarks } }: AnswerOf) {
  const { timeZone } = system
  const writing: Writing = {
    date: (day) => dayText(day, timeZone),
    number: (value) => plain(Number(value.toPrecision(2))),
  }
  const { asOf, peaks, conditions, next, not } = answer
  const verdict = verdictWords(answer, writing)
  const sentences = peaks.map((peak) => peakSentence(peak, answer, writing))
  return (
    <>
      <p class="verdict">{verdict}</p>
      <Timeline answer={answer} timeZone={timeZone} label={[...sentences, verdict].join(' ')} />
      <p class="caption">
        The upright line is {writing.date(asOf)}, the last day of your log. A peak is where it stands highest,
        a diamond the first animals; a bar reaches over nine in ten of the simulated tanks.
      </p>
      <ul class="peaks">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <section aria-labelledby="start-up-next">
        <h3 id="start-up-next">What to do next</h3>
        <ol class="deeds">
          {next.map((deed) => (
            <Deed key={deed.name} told={deedWords(deed, writing)} />
          ))}
        </ol>
      </section>
      {not.length > 0 && (
        <section aria-labelledby="start-up-not">
          <h3 id="start-up-not">What not to do</h3>
          <ul class="deeds">
            {not.map((one) => (
              <Deed key={one} told={avoidedWords[one]} />
            ))}
          </ul>
        </section>
      )}
      <section aria-labelledby="start-up-conditions">
        <h3 id="start-up-conditions">Before the first animals</h3>
        <Conditions conditions={conditions} writing={writing} />
      </section>
      <p class="acts">
        <a href={addressOf('record', undefined, { kind: 'reading' })}>Log a reading</a>
        <a href={addressOf('record', 'facts', { family: 'commissioning' })}>Set these limits yourself</a>
      </p>
      {remarks.map((remark) => (
        <p key={remark} class="caption">
          {remark}
        </p>
      ))}
    </>
  )
}

/** A deed with its reason; its caution stands before it. */
function Deed({ told: { says, why, caution } }: { readonly told: Told }) {
  return (
    <li>
      {caution !== undefined && <p class="cautions">{caution}</p>}
      {says} <span class="quiet">{why}</span>
    </li>
  )
}
