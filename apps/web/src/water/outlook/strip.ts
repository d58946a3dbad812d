import type { Day } from '@holdfast/ecosystem'
import type { Alternative } from './alternative.ts'
import { weeksAhead } from './chance.ts'
import type { Subject } from './subjects.ts'

/** The chance of being in band, week by week, as a row of boxes that are filled as high as it is. */
export interface Strip {
  /** Under which levers; left out: as today. */
  readonly mark?: Alternative['mark']
  readonly top: number
  readonly height: number
  readonly weeks: readonly {
    readonly x: number
    readonly width: number
    readonly filled: number
    /** Per cent, where it has room. */
    readonly text?: string
  }[]
}

interface OfStrip {
  readonly mark?: Alternative['mark']
  readonly subject: Subject
}

const height = 20
const gap = 6
/** Room that three digits need. */
const roomForText = 26

/** Rows under each other, from `top` on, today's husbandry first. */
export function drawStrips(
  all: readonly OfStrip[],
  asOf: Day,
  x: (day: Day) => number,
  top: number,
): readonly Strip[] {
  return all
    .map(({ mark, subject }, row) => ({
      ...(mark ? { mark } : {}),
      top: top + row * (height + gap),
      height,
      weeks: weeksAhead(subject, asOf).map(({ from, to, chance }) => {
        const width = x(to) - x(from) - 2
        return {
          x: x(from) + 1,
          width,
          filled: chance * height,
          ...(width >= roomForText ? { text: String(Math.round(100 * chance)) } : {}),
        }
      }),
    }))
    .filter(({ weeks }) => weeks.length > 0)
}

export const heightOfStrips = (strips: readonly Strip[]) => strips.length * (height + gap)
