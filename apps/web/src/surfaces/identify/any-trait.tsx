import type { Trait } from '@holdfast/facts'
import { fieldKey } from '@holdfast/identification'
import type { Noted } from './noted.ts'

interface AnyTraitOf {
  readonly noted: Noted
  /** Hands stay off: what is touched is not offered. */
  readonly handsOff: boolean
  readonly onChoose: (trait: Trait) => void
}

/** Every trait that was not said yet, for whoever noted something that is not asked for. */
export function AnyTrait({ noted, handsOff, onChoose }: AnyTraitOf) {
  const left = fieldKey.traits.filter(
    ({ key, contact }) => noted.answers[key] === undefined && !(handsOff && contact === 'touch'),
  )
  if (left.length === 0) return null
  return (
    <details class="any-trait">
      <summary>Note something else</summary>
      <ul class="states">
        {left.map((trait) => (
          <li key={trait.key}>
            <button type="button" class="large" onClick={() => onChoose(trait)}>
              {trait.title}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
