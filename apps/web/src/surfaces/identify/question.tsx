import type { Trait } from '@holdfast/facts'
import { Sketch } from '../sketch.tsx'
import { forms } from './forms.ts'

interface QuestionOf {
  readonly trait: Trait
  /** What to do is known already; this look would name it closer. */
  readonly isExtra: boolean
  /** It may be slime: what is touched for this look is told from memory only. */
  readonly handsOff: boolean
  readonly onState: (state: string) => void
  readonly onPassOver: () => void
}

/** One look: what is asked, how one looks, and what one may see. */
export function Question({ trait, isExtra, handsOff, onState, onPassOver }: QuestionOf) {
  const { key, asks, how, contact, states } = trait
  return (
    <section class="look" aria-labelledby="look">
      {isExtra && <p class="quiet">You can act on this already. One more look would name it closer:</p>}
      <h3 id="look" tabIndex={-1}>
        {asks}
      </h3>
      <p class="quiet">
        {handsOff && contact === 'touch'
          ? 'Only what you know already: touch nothing now, it may be toxic slime.'
          : how}
      </p>
      <ul class={key === 'form' ? 'states drawn' : 'states'}>
        {states.map((state) => (
          <li key={state.key}>
            <button type="button" class="large" onClick={() => onState(state.key)}>
              {key === 'form' && <Sketch path={forms[state.key]} />}
              <span>{state.title}</span>
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="key" onClick={onPassOver}>
        I cannot tell
      </button>
    </section>
  )
}
