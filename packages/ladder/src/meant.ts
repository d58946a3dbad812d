import { algaeKinds } from '@holdfast/facts'
import { identify } from '@holdfast/identification'
import type { Growth } from './growths-today.ts'
import type { LadderQuestion } from './question.ts'

/** The growth that a ladder is for. */
export interface Meant {
  readonly kind: string
  readonly title: string
  readonly finer?: string
  /** It may be toxic slime: hands stay off until it is known. */
  readonly handsOff: boolean
}

/** From this chance on a genus is taken for the one that it is. */
const sure = 0.5

/** The kind that was asked for, else the one that the field key names, else the one of which most grows. */
export function meantBy(question: LadderQuestion, growths: readonly Growth[]): Meant | undefined {
  const found = question.noted && identify(question.noted)
  const kind = question.kind ?? found?.chances[0]?.key ?? growths[0]?.kind
  if (kind === undefined) return undefined
  const [genus] = found?.finer?.chances ?? []
  const finer = question.finer ?? (genus && genus.chance >= sure ? genus.key : undefined)
  return {
    kind,
    title: algaeKinds().find(({ key }) => key === kind)?.title ?? 'What was noted',
    ...(finer === undefined ? {} : { finer }),
    handsOff: found?.handsOff ?? false,
  }
}
