import type { Check } from '../check.ts'
import { firstStartsAtOnce, twoWriters } from './at-once.ts'
import { damage } from './damage.ts'
import { type Engine, postgres, sqlite } from './engines.ts'
import { fullDisk, readOnlyFolder } from './no-room.ts'
import { powerCuts } from './power-cuts.ts'
import { syncedBefore, syncedByServer } from './synced.ts'

/**
 * The record under power cuts, damage, want of room and company, on both engines.
 *
 * @param full  as often as the promise says, which takes a quarter of an hour, and not a tenth of it
 */
export async function checkRecord({ full }: { readonly full: boolean }): Promise<readonly Check[]> {
  const inFile = await sqlite()
  const onServer = await postgres()
  const onBoth = async (engine: Engine): Promise<readonly Check[]> => [
    await powerCuts(engine, full ? 200 : 20),
    await firstStartsAtOnce(engine, full ? 200 : 10),
    await twoWriters(engine, 100),
  ]
  try {
    return [
      ...(await onBoth(inFile)),
      await syncedBefore(inFile),
      ...(await damage(inFile, full ? 1000 : 100)),
      await fullDisk(inFile),
      await readOnlyFolder(inFile),
      ...(onServer === undefined
        ? [noServer]
        : [...(await onBoth(onServer)), await syncedByServer(onServer)]),
    ]
  } finally {
    await inFile.remove()
    await onServer?.remove()
  }
}

const noServer: Check = {
  name: 'the record on PostgreSQL',
  outcome: 'skipped',
  says: 'there is none here; HOLDFAST_POSTGRES names the folder of its programs',
}
