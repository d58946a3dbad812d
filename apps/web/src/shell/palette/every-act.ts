import { kindsToWrite, titleOf } from '../../record/log/kinds-to-write.ts'
import { viewNames, views } from '../../record/views.ts'
import { views as surfaceViews } from '../../surfaces/views.ts'
import { type Act, keyedActs } from '../acts.ts'
import { addressOf } from '../address.ts'
import type { SystemName } from '../system-data.ts'

/** Everything that has an address, in the order in which it is offered. */
export const everyAct = (systems: readonly SystemName[]): readonly Act[] => [
  ...keyedActs(),
  ...kindsToWrite.map((kind) => ({
    words: `Log: ${titleOf(kind)}`,
    address: addressOf('record', undefined, { kind }),
  })),
  ...viewNames
    .filter((view) => view !== 'log')
    .map((view) => ({ words: `Record: ${views[view]}`, address: addressOf('record', view) })),
  { words: 'Water: Start-up of a new tank', address: addressOf('water', 'start-up') },
  { words: `Surfaces: ${surfaceViews.identify}`, address: addressOf('surfaces', 'identify') },
  { words: 'Describe a new system', address: addressOf('record', 'letter', { new: 'yes' }) },
  ...(systems.length > 1
    ? systems.map(({ id, name }) => ({
        words: `Show ${name}`,
        address: addressOf('water', undefined, { system: id }),
      }))
    : []),
]

/** Those that hold every typed word, case aside. */
export function actsFound(acts: readonly Act[], typed: string): readonly Act[] {
  const words = typed.toLowerCase().split(/\s+/)
  return acts.filter((act) => words.every((word) => act.words.toLowerCase().includes(word)))
}
