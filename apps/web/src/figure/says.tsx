import { Figure } from './figure.tsx'
import { Line } from './line.tsx'
import { figuresIn, type Sentence } from './sentence.ts'

/** A full stop or a comma, which never begins a line. */
const stop = /^[.,;:]+/

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
        const before = sentence[i - 1]
        const isBehindFigure = before !== undefined && typeof before !== 'string'
        if (typeof part === 'string') return isBehindFigure ? part.replace(stop, '') : part
        const next = sentence[i + 1]
        const [mark] = (typeof next === 'string' && stop.exec(next)) || []
        return (
          <span key={`${part.id}-${i}`} class={mark === undefined ? undefined : 'with-stop'}>
            <Figure of={part} />
            {mark}
          </span>
        )
      })}
    </Line>
  )
}
