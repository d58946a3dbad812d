import '../../style/identify.css'
import '../../style/crew.css'
import { useState } from 'preact/hooks'
import { addressOf, fromAddress, intoAddress } from '../../shell/address.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { Working } from '../../shell/working.tsx'
import { questionOf } from '../../water/question.ts'
import type { CrewTold } from '../../worker/answers.ts'
import type { Answer, Question } from '../../worker/protocol.ts'
import { useAnswer } from '../../worker/use-answer.ts'
import { Barred } from './barred.tsx'
import { issueText } from './issue-text.ts'
import { PlanView } from './plan.tsx'
import { WishForm } from './wish-form.tsx'
import { type Ticked, textOf, tickedIn, wishesOf } from './wishes.ts'

const crewIn = (told: Answer) => ('crew' in told ? told : undefined)

/** Who should live here: a plan of whole animals, asked for with what the keeper likes and refuses. */
export function CrewView({ data }: { readonly data: SystemData }) {
  const [ticked, setTicked] = useState(() => tickedIn(fromAddress))
  const [question, setQuestion] = useState<Question | undefined>()
  /** What was ticked when the plan was asked for. */
  const [askedFor, setAskedFor] = useState<Ticked | undefined>()
  const [issue, setIssue] = useState<string | undefined>()
  const now = useAnswer(question, crewIn)
  const change = (next: Ticked) => {
    intoAddress({ ...textOf(next) })
    setTicked(next)
  }
  const ask = () => {
    const read = wishesOf(ticked)
    setIssue('issue' in read ? read.issue : undefined)
    if ('issue' in read) return
    // What is still worked on answers other wishes.
    if (now.working) now.cancel()
    setAskedFor(ticked)
    setQuestion({ kind: 'crew', outlook: questionOf(data), wishes: read.wishes })
  }
  return (
    <section class="view crew" aria-labelledby="crew-title">
      <h2 id="crew-title">Who should live here</h2>
      <p class="lead">
        The cheapest crew that eats what <a href={addressOf('surfaces')}>grows on your surfaces</a> and finds
        food when less grows. Each plan lives a year in the model before you see it.
      </p>
      <WishForm system={data.system} ticked={ticked} issue={issue} onTick={change} onAsk={ask} />
      <Working asked={now} what="The crew" />
      {now.answer && (
        <div class={now.old ? 'old' : undefined}>
          {askedFor !== ticked && (
            <p class="line quiet">This answers what you had ticked before. Ask again for the new wishes.</p>
          )}
          <Told told={now.answer} data={data} />
        </div>
      )}
    </section>
  )
}

function Told({ told, data }: { readonly told: CrewTold; readonly data: SystemData }) {
  const { crew } = told
  if (crew.status !== 'none') return <PlanView plan={crew} told={told} data={data} />
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
