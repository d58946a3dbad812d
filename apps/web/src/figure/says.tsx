import { Figure } from './figure.tsx'
import { Line } from './line.tsx'
import { figuresIn, type Sentence } from './sentence.ts'

/** A sentence as a line of its own, with figures that open. */
export function Says({
  sentence,
  className = 'line',
}: {
  readonly sentence: Sentence
  readonly className?: string
}) {
  return (
    <Line figures={figuresIn(sentence)} className={className}>
      {sentence.map((part, i) => {
        if (typeof part === 'string') return i === 0 ? part : part.slice(markOf(part).length)
        const mark = markOf(sentence[i + 1])
        const figure = <Figure key={`${part.id}-${i}`} of={part} />
        return mark === '' ? (
          figure
        ) : (
          <span key={`${part.id}-${i}`} class="with-mark">
            {figure}
            {mark}
          </span>
        )
      })}
    </Line>
  )
}

/** The stop or comma that a part begins with: it stays on the line of the figure before it. */
const markOf = (part: Sentence[number] | undefined): string =>
  typeof part === 'string' ? (/^[.,;:)]+/.exec(part)?.[0] ?? '') : ''
