import type { Condition } from '@holdfast/commissioning'
import {
  askedWords,
  conditionWords,
  shownWords,
  stateWords,
  type Writing,
} from '@holdfast/commissioning/words'
import { capital } from './words.ts'

const size = 16

/** A shape for each state, so that a list is read at a glance; the word stands beside it. */
const shapes: Readonly<Record<Condition['state'], string>> = {
  met: 'M3,8l3.5,4l6,-8',
  open: 'M8,2a6,6 0 1 0 0.01,0z',
  'not read': 'M2,8h3m2,0h2m2,0h3',
  look: 'M1,8q7,-8 14,0q-7,8 -14,0zM8,6a2,2 0 1 0 0.01,0z',
}

interface ConditionsOf {
  readonly conditions: readonly Condition[]
  readonly writing: Writing
}

/** What must be so before the first animals: what is shown, what is asked, and why. */
export function Conditions({ conditions, writing }: ConditionsOf) {
  return (
    <ul class="conditions">
      {conditions.map((one) => {
        const { says, why } = conditionWords[one.name]
        const shown = shownWords(one, writing)
        const asked = askedWords(one, writing)
        return (
          <li key={one.name}>
            <svg viewBox={`0 0 ${size} ${size}`} width={size} height={size} aria-hidden="true">
              <path d={shapes[one.state]} />
            </svg>
            <div>
              <b>{says}</b>: {stateWords[one.state]}.
              {(shown !== '' || asked !== '') && (
                <p>
                  {shown !== '' && `${capital(shown)}. `}
                  {asked !== '' && `Asked is ${asked}.`}
                </p>
              )}
              <p class="quiet">{why}</p>
            </div>
          </li>
        )
      })}
    </ul>
  )
}
