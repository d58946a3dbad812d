import type { Crew } from './crew.ts'

/** How soon a slice of work is wanted: first answers before whole ones, and what a finger moves before the rest. */
export const urgency = { firstOutlook: 0, firstLedger: 1, wholeOutlook: 2, wholeLedger: 3 } as const

export type Urgency = (typeof urgency)[keyof typeof urgency]

interface Waiting {
  readonly urgency: Urgency
  readonly start: () => void
}

/** One crew for several questions: a slice after another, the most urgent first, the oldest of equals. */
export function inTurns(crew: Crew): (urgency: Urgency) => Crew {
  const waiting: Waiting[] = []
  let isBusy = false

  function next(): void {
    const most = waiting.reduce<Waiting | undefined>(
      (best, one) => (best && best.urgency <= one.urgency ? best : one),
      undefined,
    )
    isBusy = most !== undefined
    if (!most) return
    waiting.splice(waiting.indexOf(most), 1)
    most.start()
  }

  return (urgency) => ({
    async run(shared, items) {
      await new Promise<void>((start) => {
        waiting.push({ urgency, start })
        if (!isBusy) next()
      })
      try {
        return await crew.run(shared, items)
      } finally {
        next()
      }
    },
  })
}
