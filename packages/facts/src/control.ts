import list from './data/controls.json' with { type: 'json' }
import type { Measure } from './measure.ts'

/** A measure as it is taken against one kind: what differs from the measure in general. */
export interface Control
  extends Pick<
    Measure,
    'title' | 'how' | 'evidence' | 'effect' | 'days' | 'risks' | 'cautions' | 'source' | 'provenance'
  > {
  /** Key of the measure. */
  readonly measure: string
  /** Taxa that do it, the gentlest first; a tank may fit none of them. */
  readonly animals?: readonly string[]
  /** Finer kinds for which alone it helps, and for which it does not. */
  readonly onlyFor?: readonly string[]
  readonly notFor?: readonly string[]
}

const all = list as readonly { readonly kind: string; readonly rungs: readonly Control[] }[]

/** Every kind that has controls, with them, the gentlest first. */
export const controls = (): readonly { readonly kind: string; readonly rungs: readonly Control[] }[] => all

/** What is done about a kind, the gentlest first; none where the catalogue knows nothing of it. */
export const controlsOf = (kind: string): readonly Control[] =>
  all.find((one) => one.kind === kind)?.rungs ?? []
