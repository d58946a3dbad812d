import { answerable } from '@holdfast/identification'
import type { Noted } from './noted.ts'

interface NotedListOf {
  readonly noted: Noted
  readonly onTakeBack: (trait: string) => void
}

const all = new Map(answerable().map((one) => [one.key, one]))
const titleOf = (trait: string): string => all.get(trait)?.title ?? trait
const stateOf = (trait: string, state: string): string =>
  all.get(trait)?.states.find(({ key }) => key === state)?.title ?? state

/** What was said, each with its way back. */
export function NotedList({ noted: { answers, passedOver }, onTakeBack }: NotedListOf) {
  const said = [
    ...Object.entries(answers).map(([trait, state]) => ({ trait, words: stateOf(trait, state) })),
    ...passedOver.map((trait) => ({ trait, words: 'cannot tell' })),
  ]
  if (said.length === 0) return null
  return (
    <section aria-labelledby="noted">
      <h3 id="noted">What you noted</h3>
      <ul class="noted">
        {said.map(({ trait, words }) => (
          <li key={trait}>
            <span>
              <i>{titleOf(trait)}</i> {words}
            </span>
            <button
              type="button"
              class="key"
              aria-label={`Take back: ${titleOf(trait)}`}
              onClick={() => onTakeBack(trait)}
            >
              Take back
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
