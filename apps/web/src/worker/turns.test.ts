import { expect, it } from 'vitest'
import type { Crew, Shared } from './crew.ts'
import { inTurns, urgency } from './turns.ts'

/** Runs nothing by itself: each slice ends when it is told to. */
function slowCrew() {
  const begun: unknown[] = []
  const ends: (() => void)[] = []
  const crew: Crew = {
    run: async (_, items) => {
      begun.push(items[0])
      await new Promise<void>((end) => ends.push(end))
      return []
    },
  }
  return { begun, crew, end: () => ends.shift()?.() }
}

const shared = {} as Shared<string, never>
const settled = () => new Promise((resolve) => setImmediate(resolve))

it('runs a slice after another, the most urgent of those that wait first', async () => {
  const { begun, crew, end } = slowCrew()
  const turn = inTurns(crew)
  void turn(urgency.wholeLedger).run(shared, ['ledger, first slice'])
  void turn(urgency.wholeLedger).run(shared, ['ledger of another view'])
  void turn(urgency.wholeOutlook).run(shared, ['outlook'])
  void turn(urgency.firstOutlook).run(shared, ['lever'])
  for (let slice = 1; slice <= 4; slice += 1) {
    await settled()
    expect(begun).toHaveLength(slice)
    end()
  }
  expect(begun).toEqual(['ledger, first slice', 'lever', 'outlook', 'ledger of another view'])
})

it('goes on after a slice that fails', async () => {
  const turn = inTurns({ run: (_, items) => Promise.reject(new Error(String(items[0]))) })
  const failed = ['a', 'b'].map((item) => turn(urgency.firstOutlook).run(shared, [item]))
  expect((await Promise.allSettled(failed)).map(({ status }) => status)).toEqual(['rejected', 'rejected'])
})
