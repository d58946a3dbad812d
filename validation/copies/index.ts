import type { Check } from '../check.ts'
import { sqlite } from '../record/engines.ts'
import { killedBackups, killedRestores } from './killed.ts'
import { copiesWithoutRoom } from './no-room.ts'

/** Backups, restores and exports that are cut off or have no room. @param full  200 cuts each, and not 10 */
export async function checkCopies({ full }: { readonly full: boolean }): Promise<readonly Check[]> {
  const engine = await sqlite()
  const times = full ? 200 : 10
  try {
    return [
      await killedBackups(engine, times),
      await killedRestores(engine, times),
      await copiesWithoutRoom(engine),
    ]
  } finally {
    await engine.remove()
  }
}
