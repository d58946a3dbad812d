import { outside, standAccount, standCover, water } from '../accounts/index.ts'
import { carry, change, process, setting, state } from '../declare/index.ts'
import { type Growing, namedStands } from '../processes/stands.ts'

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
    cover: state(({ stand }) => standCover(stand), '1'),
  },
  parameters: {},
  transfers: [
    carry({
      from: ({ stand }) => standAccount(stand),
      to: outside.handRemoved,
      atoms: ['N', 'P', 'C'],
      rate: 'removed * (1 - adrift)',
    }),
    carry({
      from: ({ stand }) => standAccount(stand),
      to: water.particles,
      atoms: ['N', 'P', 'C'],
      rate: 'removed * adrift',
    }),
    change({ state: ({ stand }) => standCover(stand), rate: '-removed * cover' }),
  ],
})
