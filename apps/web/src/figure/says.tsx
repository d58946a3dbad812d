import { Figure } from './figure.tsx'
import { Line } from './line.tsx'
import type { Sentence } from './sentence.ts'

/** A sentence as a line of its own, with figures that open. */
export function Says({
  sentence,
  className = 'line',
}: {
  readonly sentence: Sentence
  readonly className?: string
}) {
  return (
    <Line className={className}>
      {sentence.map((part, i) =>
        typeof part === 'string' ? part : <Figure key={`${part.name}-${i}`} of={part} />,
      )}
    </Line>
  )
}
