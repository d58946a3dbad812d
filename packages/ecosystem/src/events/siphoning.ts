import { bed, outside } from '../accounts/index.ts'
import { type Account, carry, fact, process, setting } from '../declare/index.ts'
import type { System } from '../system.ts'

/** Setting that holds the part of floor and sand that was siphoned, 0 to 1. */
export const siphonedSetting = 'siphoned part'

interface Waste {
  readonly system: System
  readonly waste: Account
}

export const siphoning = process<Waste>({
  id: 'siphoning',
  title: 'Siphoning',
  says: 'Settled waste that is siphoned out cannot rot any more; what lies in the rock stays.',
  source: 'holdfast-estimate',
  event: true,
  each: (system) => [bed.fast, bed.slow].map((waste) => ({ name: waste.title, of: { system, waste } })),
  reads: { part: setting(siphonedSetting, '1', () => 0) },
  parameters: { taken: fact('mech.siphon', '1') },
  transfers: [
    carry({
      from: ({ waste }) => waste,
      to: outside.siphoned,
      atoms: ['N', 'P', 'C'],
      rate: 'part * taken',
    }),
  ],
})
