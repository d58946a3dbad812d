import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, onTestFinished, test } from 'vitest'
import { nitrate } from './conformance/nitrate.ts'
import type { Entry, EntryOf } from './entries/entry.ts'
import { journal } from './entries/journal.ts'
import { linesOf } from './journal-lines.ts'
import type { Logbook } from './logbook.ts'
import { openLogbook } from './sqlite/index.ts'

function emptyLog(): Logbook {
  const folder = mkdtempSync(join(tmpdir(), 'journal-'))
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  onTestFinished(async () => {
    await opened.logbook.close()
    rmSync(folder, { recursive: true, force: true })
  })
  return opened.logbook
}

const ids = Array.from({ length: 12 }, (_, number) => nitrate(number).id)

function retraction(number: number, body: EntryOf<'retraction'>['body']): Entry {
  const { id, workspace, system, at, precision, madeAt, by, device } = nitrate(number)
  return { id, workspace, system, at, precision, madeAt, by, device, kind: 'retraction', v: 1, body }
}

/** A log of readings, corrections of them and of corrections, batches and retractions, in any order. */
const logs = fc
  .tuple(
    ...ids.map((_, number) =>
      fc.oneof(
        { weight: 2, arbitrary: fc.constant(nitrate(number)) },
        { weight: 2, arbitrary: fc.constant(nitrate(number, { batch: 'sheet' })) },
        { weight: 3, arbitrary: fc.constantFrom(...ids).map((replaces) => nitrate(number, { replaces })) },
        {
          weight: 2,
          arbitrary: fc.constantFrom(...ids, 'sheet').map((id) => {
            return retraction(number, { of: id === 'sheet' ? 'batch' : 'entry', id })
          }),
        },
      ),
    ),
  )
  .chain((entries) => fc.shuffledSubarray<Entry>(entries, { minLength: 1 }))

test('what became of a few entries is the same without the rest of the log', async () => {
  const log = emptyLog()
  let round = 0
  await fc.assert(
    fc.asyncProperty(logs, fc.nat(3), async (entries, from) => {
      const system = `reef ${round++}`
      // Ids are of the workspace, so each round has its own.
      const own = (id: string): string => `${id.slice(0, 9)}${String(round).padStart(4, '0')}${id.slice(13)}`
      const sent = entries.map((entry) => renamed({ ...entry, system }, own))
      // Of one sending all have one time of receipt, and only their order tells the later.
      await log.append(sent.slice(0, 4))
      await log.append(sent.slice(4))
      const whole = journal(await log.read({ system }))
      const some = whole.slice(from, from + 3)
      const lines = await linesOf(
        log,
        some.map(({ entry }) => entry),
      )
      expect(lines).toEqual(some)
    }),
    { numRuns: 40 },
  )
})

function renamed(entry: Entry, own: (id: string) => string): Entry {
  const { id, replaces } = entry
  const kept = { ...entry, id: own(id), ...(replaces !== undefined && { replaces: own(replaces) }) }
  if (kept.kind !== 'retraction' || kept.body.of === 'batch') return kept
  return { ...kept, body: { ...kept.body, id: own(kept.body.id) } }
}
