import { useState } from 'preact/hooks'
import { fromAddress, intoAddress } from '../../shell/address.ts'
import { withMark } from '../../ways/decimal.ts'
import { hasOwnUnit } from '../own-unit.ts'
import { answerTo, holdsFor, type SumAnswer, type Typed } from './answer.ts'
import { Choices } from './choices.tsx'
import { sums } from './sums.ts'

/** One sum at a time, worked out as one types. */
export function SeaWater() {
  const [id, setId] = useState(() => fromAddress('sum') ?? sums[0]?.id)
  const [typed, setTyped] = useState<Typed>({})
  const sum = sums.find((one) => one.id === id) ?? sums[0]
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
          value={sum.id}
          onChange={(event) => {
            intoAddress({ sum: event.currentTarget.value })
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
      <p class="lead" id="sum-says">
        {sum.says}
      </p>
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
              value={typed[input] ?? withMark(String(start))}
              onInput={(event) => fill(input, event.currentTarget.value)}
            />{' '}
            <span class="quiet" id={`unit-${input}`}>
              {hasOwnUnit(typed[input] ?? '') ? '' : unit}
            </span>
          </span>
        </div>
      ))}
      {sum.caution && (
        <p class="caution" id="sum-caution">
          {sum.caution}
        </p>
      )}
      <div aria-live="polite" id="sum-answer">
        <Answer answer={answer} onAnswer={fill} />
      </div>
      <p class="reach">
        {holdsFor(sum)}By {sum.source}.
      </p>
    </section>
  )
}

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
