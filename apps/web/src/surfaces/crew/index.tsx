import '../../style/identify.css'
import '../../style/crew.css'
import type { Alternative, Wishes } from '@holdfast/crew-plan'
import { algaeKind, grazer } from '@holdfast/facts'
import { useEffect, useRef, useState } from 'preact/hooks'
import { LastAct } from '../../record/log/last-act.tsx'
import { NotYet } from '../../record/outbox/not-yet.tsx'
import { outbox } from '../../record/outbox/use-outbox.ts'
import { addressOf, fromAddress, intoAddress } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import { questionOf } from '../../water/question.ts'
import type { CrewTold } from '../../worker/answers.ts'
import type { Answer, Question } from '../../worker/protocol.ts'
import { useAnswer } from '../../worker/use-answer.ts'
import { Barred } from './barred.tsx'
import { issueText } from './issue-text.ts'
import { KeptPlanView } from './kept-plan.tsx'
import { type Plan, PlanView } from './plan.tsx'
import { useKeptPlan } from './use-kept-plan.ts'
import { WishForm } from './wish-form.tsx'
import { refused, type Ticked, textOf, tickedIn, wishesOf } from './wishes.ts'

const crewIn = (told: Answer) => ('crew' in told ? told : undefined)

/** What a plan was asked for with. */
interface AskedFor {
  readonly ticked: Ticked
  readonly wishes: Wishes
  /** The animal that one press left out of the plan before, and what was ticked then. */
  readonly without?: { readonly taxon: string; readonly before: Ticked }
}

/** Who should live here: a plan of whole animals, asked for with what the keeper likes and refuses. */
export function CrewView({ data }: { readonly data: SystemData }) {
  const [ticked, setTicked] = useState(() => tickedIn(fromAddress, data.system.own_animals))
  const [question, setQuestion] = useState<Question | undefined>()
  const [askedFor, setAskedFor] = useState<AskedFor | undefined>()
  const [issue, setIssue] = useState<string | undefined>()
  const now = useAnswer(question, crewIn)
  const keeping = useKeptPlan(data)
  const leftOut = useRef<HTMLButtonElement>(null)
  const change = (next: Ticked) => {
    intoAddress({ ...textOf(next) })
    setTicked(next)
  }
  const ask = (of: Ticked, without?: AskedFor['without']) => {
    const read = wishesOf(of)
    setIssue('issue' in read ? read.issue : undefined)
    if ('issue' in read) return
    // What is still worked on answers other wishes.
    if (now.working) now.cancel()
    setAskedFor({ ticked: of, wishes: read.wishes, ...(without && { without }) })
    setQuestion({ kind: 'crew', outlook: questionOf(data), wishes: read.wishes })
  }
  const askWithout = (taxon: string) => {
    const next = refused(ticked, taxon)
    change(next)
    ask(next, { taxon, before: ticked })
  }
  const without = askedFor?.without
  // The button that was pressed goes with its plan: the way back takes the focus.
  useEffect(() => leftOut.current?.focus(), [without])
  const isOfNow = !now.old && !now.working && askedFor?.ticked === ticked
  return (
    <section class="view crew" aria-labelledby="crew-title">
      <h2 id="crew-title">Who should live here</h2>
      <p class="lead">
        The cheapest crew that eats what <a href={addressOf('surfaces')}>grows on your surfaces</a> and finds
        food when less grows. Each plan lives a year in the model before you see it.
      </p>
      <Keeping keeping={keeping} data={data} />
      <WishForm
        system={data.system}
        ticked={ticked}
        issue={issue}
        onTick={change}
        onAsk={() => ask(ticked)}
      />
      <Working asked={now} what="The crew" />
      {without && (
        <p class="line">
          Without the {grazer(without.taxon)?.tradeName ?? without.taxon}.{' '}
          <button
            type="button"
            class="key"
            ref={leftOut}
            onClick={() => {
              change(without.before)
              ask(without.before)
            }}
          >
            The plan with it again
          </button>
        </p>
      )}
      {now.answer && (
        <div class={now.old ? 'old' : undefined}>
          {askedFor?.ticked !== ticked && (
            <p class="line quiet">This answers what you had ticked before. Ask again for the new wishes.</p>
          )}
          <Untold kinds={now.answer.untold} />
          <Told
            told={now.answer}
            data={data}
            keeping={keeping}
            wishes={isOfNow ? askedFor?.wishes : undefined}
            onWithout={askWithout}
          />
        </div>
      )}
    </section>
  )
}

/** What the plan feeds its animals with although no survey has it. */
function Untold({ kinds }: { readonly kinds: readonly string[] }) {
  return kinds.length === 0 ? null : (
    <p class="line quiet">
      Your log does not tell of {kinds.map((kind) => algaeKind(kind).title).join(' and ')}. They grow in every
      lit tank, so the plan reckons with them;{' '}
      <a href={addressOf('record', undefined, { kind: 'survey' })}>a survey</a> makes it better.
    </p>
  )
}

interface KeepingOf {
  readonly keeping: ReturnType<typeof useKeptPlan>
  readonly data: SystemData
}

/** The plan that is kept, and what was last done with it. */
function Keeping({ keeping: { kept, trouble, last, outgoing, takeBack, undo }, data }: KeepingOf) {
  return (
    <>
      {trouble && (
        <p class="issue" role="alert">
          {trouble} Whether a plan is kept is not shown.
        </p>
      )}
      {kept && <KeptPlanView plan={kept} data={data} onTakeBack={takeBack} />}
      <LastAct act={last} outgoing={outgoing} onUndo={undo} />
      <NotYet
        outgoing={outgoing}
        onMend={({ entry }) => location.assign(addressOf('record', undefined, { kind: entry.kind }))}
        onDrop={({ entry }) => outbox.drop(entry.id)}
      />
    </>
  )
}

interface ToldOf {
  readonly told: CrewTold
  readonly data: SystemData
  readonly keeping: ReturnType<typeof useKeptPlan>
  /** What it was asked for with; left out where the page asks for something else by now. */
  readonly wishes: Wishes | undefined
  readonly onWithout: (taxon: string) => void
}

/** A plan, or another crew in its place that would do as well. */
function Plans({ plan, told, data, keeping, wishes, onWithout }: ToldOf & { readonly plan: Plan }) {
  const [chosen, choose] = useState<{ readonly insteadOf: Plan; readonly other: Alternative } | undefined>()
  const back = useRef<HTMLButtonElement>(null)
  const other = chosen?.insteadOf === plan ? chosen.other : undefined
  const shown = other ? inPlaceOf(plan, other) : plan
  // The button that was pressed goes with its list: the way back takes the focus.
  useEffect(() => back.current?.focus(), [other])
  return (
    <>
      {other && (
        <p class="line">
          Another crew that would do as well.{' '}
          <button type="button" class="key" ref={back} onClick={() => choose(undefined)}>
            The first plan again
          </button>
        </p>
      )}
      <PlanView
        plan={shown}
        told={told}
        data={data}
        isKept={keeping.isKept(shown)}
        onOther={(other) => choose({ insteadOf: plan, other })}
        onKeep={wishes && (() => keeping.keep(shown, wishes))}
        onWithout={onWithout}
      />
    </>
  )
}

/** Another crew as a plan: what it makes of water and books was not worked out. */
function inPlaceOf({ status, proved, barred }: Plan, other: Alternative): Plan {
  return { ...other, status, proved, barred, alternatives: [] }
}

function Told({ told, data, keeping, wishes, onWithout }: ToldOf) {
  const { crew } = told
  if (crew.status !== 'none')
    return (
      <Plans plan={crew} told={told} data={data} keeping={keeping} wishes={wishes} onWithout={onWithout} />
    )
  return (
    <>
      <h3>No plan</h3>
      {crew.issues.map((issue) => (
        <p key={issue.where + issue.got} class="line">
          {issueText(issue)}
        </p>
      ))}
      <Barred barred={crew.barred} />
    </>
  )
}
