import { Figure } from './figure.tsx'
import { Line } from './line.tsx'
import { figuresIn, type Sentence } from './sentence.ts'

/** The mark that stands right after a figure and may not begin a line without it. */
const markBefore = (part: Sentence[number] | undefined): string =>
  typeof part === 'string' ? (/^[.,:;)]+/.exec(part)?.[0] ?? '') : ''

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
        if (typeof part === 'string') return i === 0 ? part : part.slice(markBefore(part).length)
        const mark = markBefore(sentence[i + 1])
        return (
          <span key={`${part.id}-${i}`} class="bound">
            <Figure of={part} />
            {mark}
          </span>
        )
      })}
    </Line>
  )
}
