import type { Trait } from '@holdfast/facts'
import { fieldKey } from '@holdfast/identification'
import type { Noted } from './noted.ts'

interface AnyTraitOf {
  readonly noted: Noted
  /** Hands stay off: what is touched may be told, and is not looked at now. */
  readonly handsOff: boolean
  readonly onChoose: (trait: Trait) => void
}

/** Every trait that was not said yet, for whoever noted something that is not asked for. */
export function AnyTrait({ noted, handsOff, onChoose }: AnyTraitOf) {
  const left = fieldKey.traits.filter(({ key }) => noted.answers[key] === undefined)
  const waits = ({ contact }: Trait) => handsOff && contact === 'touch'
  const waiting = left.filter(waits)
  if (left.length === 0) return null
  return (
    <details class="any-trait">
      <summary>Note something else</summary>
      <Traits traits={left.filter((one) => !waits(one))} onChoose={onChoose} />
      {waiting.length > 0 && (
        <>
          <p class="quiet">Only if you know it already; touch nothing for it now:</p>
          <Traits traits={waiting} onChoose={onChoose} />
        </>
      )}
    </details>
  )
}

interface TraitsOf {
  readonly traits: readonly Trait[]
  readonly onChoose: (trait: Trait) => void
}

const Traits = ({ traits, onChoose }: TraitsOf) => (
  <ul class="states">
    {traits.map((trait) => (
      <li key={trait.key}>
        <button type="button" class="large" onClick={() => onChoose(trait)}>
          {trait.title}
        </button>
      </li>
    ))}
  </ul>
)
