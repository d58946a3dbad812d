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
      {sentence.map((part, i) =>
        typeof part === 'string' ? part : <Figure key={`${part.id}-${i}`} of={part} />,
      )}
    </Line>
  )
}
