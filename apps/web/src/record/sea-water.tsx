import { useState } from 'preact/hooks'
import { Choices } from './choices.tsx'
import { answerTo, holdsFor, type SumAnswer, type Typed } from './sums/answer.ts'
import { sums } from './sums/sums.ts'

/** One sum at a time, worked out as one types. */
export function SeaWater() {
  const [id, setId] = useState(sums[0]?.id)
  const [typed, setTyped] = useState<Typed>({})
  const sum = sums.find((one) => one.id === id)
  if (!sum) return null
  const answer = answerTo(sum, typed)
  const fill = (input: string, text: string) => setTyped({ ...typed, [input]: text })
  return (
    <section class="view" aria-labelledby="sea-water-title">
      <h2 id="sea-water-title">Sea water</h2>
      <p class="lead">Sums that come up beside the tank. Nothing here is written into your log.</p>
      <div class="blank">
        <label for="sum">You want to know</label>
        <select
          id="sum"
          value={id}
          onChange={(event) => {
            setId(event.currentTarget.value)
            setTyped({})
          }}
        >
          {sums.map((one) => (
            <option key={one.id} value={one.id}>
              {one.asks}
            </option>
          ))}
        </select>
      </div>
      {sum.blanks.map(({ input, label, unit, start }) => (
        <div class="blank" key={`${sum.id} ${input}`}>
          <label for={`blank-${input}`}>{label}</label>
          <span class="typed">
            <input
              id={`blank-${input}`}
              type="text"
              autocomplete="off"
              aria-describedby={`unit-${input}`}
              aria-invalid={answer.is === 'wrong' && answer.inputs.includes(input)}
              value={typed[input] ?? String(start)}
              onInput={(event) => fill(input, event.currentTarget.value)}
            />{' '}
            <span class="quiet" id={`unit-${input}`}>
              {hasOwnUnit(typed[input]) ? '' : unit}
            </span>
          </span>
        </div>
      ))}
      <div aria-live="polite" id="sum-answer">
        <Answer answer={answer} onAnswer={fill} />
      </div>
      {sum.caution && <p class="line">{sum.caution}</p>}
      <p class="reach">
        {holdsFor(sum)}By {sum.source}.
      </p>
    </section>
  )
}

/** Whether what is typed ends in a unit, beside which that of the blank would be a second one. */
const hasOwnUnit = (text = ''): boolean => /[^\d.,\s]\s*$/.test(text)

interface AnswerOf {
  readonly answer: SumAnswer
  readonly onAnswer: (input: string, text: string) => void
}

function Answer({ answer, onAnswer }: AnswerOf) {
  switch (answer.is) {
    case 'result':
      return <p class="answer">{answer.text}</p>
    case 'question':
      return <Choices ask={answer.ask} onAnswer={(text) => onAnswer(answer.input, text)} />
    case 'wrong':
      return <p class="issue">{answer.issues.join(' ')}</p>
  }
}
