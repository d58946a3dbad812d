import type { Question } from '@holdfast/quantities'

interface ChoicesOf {
  readonly ask: Question
  /** Told the same figure made clear. */
  readonly onAnswer: (text: string) => void
}

/** A question about a figure of two meanings; each meaning is a button. */
export function Choices({ ask, onAnswer }: ChoicesOf) {
  return (
    <>
      <p class="line">{ask.question}</p>
      <ul class="choices">
        {ask.options.map(({ answer, means }) => (
          <li key={answer}>
            <button type="button" class="key" onClick={() => onAnswer(answer)}>
              {answer}
            </button>{' '}
            <span class="quiet">{means}</span>
          </li>
        ))}
      </ul>
    </>
  )
}
