import type { Check } from '../check.ts'
import { firstStartsAtOnce, twoWriters } from './at-once.ts'
import { damage } from './damage.ts'
import { type Engine, postgres, sqlite } from './engines.ts'
import { fullDisk, readOnlyFolder } from './no-room.ts'
import { powerCuts } from './power-cuts.ts'
import { syncedBefore, syncedByServer } from './synced.ts'

/**
 * The record under power cuts, damage, want of room and company, on both engines; each check as it ends.
 *
 * @param full  as often as the promise says, which takes most of an hour, and not a tenth of it
 */
export async function* checkRecord({ full }: { readonly full: boolean }): AsyncGenerator<Check> {
  const inFile = await sqlite()
  try {
    yield* onEach(inFile, full)
    yield await syncedBefore(inFile)
    yield* await damage(inFile, full ? 1000 : 100)
    yield await fullDisk(inFile)
    yield await readOnlyFolder(inFile)
  } finally {
    await inFile.remove()
  }
  const onServer = await postgres()
  if (onServer === undefined) {
    yield noServer
    return
  }
  try {
    yield* onEach(onServer, full)
    yield await syncedByServer(onServer)
  } finally {
    await onServer.remove()
  }
}

async function* onEach(engine: Engine, full: boolean): AsyncGenerator<Check> {
  yield await powerCuts(engine, full ? 200 : 20)
  yield await firstStartsAtOnce(engine, full ? 200 : 10)
  yield await twoWriters(engine, 100)
}

const noServer: Check = {
  name: 'the record on PostgreSQL',
  outcome: 'skipped',
  says: 'there is none here; HOLDFAST_POSTGRES names the folder of its programs',
}
