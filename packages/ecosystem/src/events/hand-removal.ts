import { outside, water } from '../accounts/index.ts'
import { change, process, setting } from '../declare/index.ts'
import {
  covering,
  type Growing,
  leaves,
  namedStands,
  ownCover,
  standing,
  stored,
} from '../processes/stands.ts'

/** Settings of a removal, by surface and kind: the share taken off, and the part of it left to drift. */
export const removedSetting = (surface: string, kind: string): string => `hand removal ${surface} ${kind}`
export const driftSetting = 'hand removal left to drift'

export const handRemoval = process<Growing>({
  id: 'hand removal',
  title: 'Hand removal',
  says: 'Algae taken off by hand leave the system if siphoned out; left to drift they are waste in it.',
  source: 'mass balance',
  event: true,
  each: namedStands,
  reads: {
    removed: setting(
      ({ stand }) => removedSetting(stand.surface, stand.kind),
      '1',
      () => 0,
    ),
    adrift: setting(driftSetting, '1', () => 0),
    carbon: standing.carbon,
    cover: covering.cover,
    ...stored.reads,
  },
  parameters: {},
  terms: stored.terms,
  transfers: [
    ...leaves(outside.handRemoved, 'removed * (1 - adrift)'),
    ...leaves(water.particles, 'removed * adrift'),
    change({ state: ownCover, rate: '-removed * cover' }),
  ],
})
