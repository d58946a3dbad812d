import type { OutlookAnswer } from '../../worker/answers.ts'
import type { Settings } from '../settings.ts'
import type { Mark } from '../variants/kept.ts'

/** A way to keep the system other than today's, with what may come of it. */
export interface Alternative {
  readonly mark: 'levers' | Mark
  readonly name: string
  readonly set: Settings
  readonly answer: OutlookAnswer
  /** True: the answer is to other settings, and another is being worked out. */
  readonly old: boolean
  /** True: so the levers stand. */
  readonly inHand: boolean
}

/** As it stands in a picture: a kept variant by its letter, the levers in hand without one. */
export const letterOf = ({ mark }: Pick<Alternative, 'mark'>) => (mark === 'levers' ? '' : mark)
