import list from './data/traits.json' with { type: 'json' }
import { UnknownKey } from './unknown-key.ts'

/** What a growth may be looked at for, such as its colour, and the states that a keeper may note. */
export interface Trait {
  readonly key: string
  readonly title: string
  /** The question, as a keeper is asked it. */
  readonly asks: string
  /** How one looks, and what to mind. */
  readonly how: string
  readonly tool: string
  /**
   * What looking asks of the hand: nothing, a drop for the microscope, a hose held close, a bit in gloved
   * fingers. What is 'never asked' is taken where a keeper tells it by himself.
   */
  readonly contact: 'none' | 'drop' | 'hose' | 'touch' | 'never asked'
  /** Traits with the same word here say nearly the same, and count together as one and a half. */
  readonly sisters?: string
  readonly states: readonly TraitState[]
}

export interface TraitState {
  readonly key: string
  readonly title: string
}

const all = list as readonly Trait[]

/** All traits of the field key. */
export const traits = (): readonly Trait[] => all

/** @throws UnknownKey with the nearest traits */
export function trait(key: string): Trait {
  const found = all.find((one) => one.key === key)
  if (found !== undefined) return found
  throw new UnknownKey(
    'unknown-trait',
    'Trait',
    key,
    all.map((one) => one.key),
  )
}
