import { stubbornKind } from './crew-rules.ts'
import type { FactsOfSystem } from './own-fact.ts'

/** Days for which an outbreak that is gone is watched before it is closed; longer where the kind is stubborn. */
export const watchDays = (kind: string | undefined, { typical }: FactsOfSystem): number =>
  typical(kind !== undefined && stubbornKind(kind) ? 'ladder.watch.stubborn' : 'ladder.watch.usual')
