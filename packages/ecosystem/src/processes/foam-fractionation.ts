import { outside, water } from '../accounts/index.ts'
import { carry, fact, process, setting } from '../declare/index.ts'
import type { Skimmer, System } from '../system.ts'
import { type InSystem, volumeOf } from './readings.ts'

/** A skimmer and the water it stands in. */
export interface Running extends InSystem {
  readonly skimmer: Skimmer
  readonly index: number
}

/** Setting that is 1 while the skimmer runs. */
export const runningSetting = (index: number): string => `skimmer ${index} running`
/** Setting that says how large the skimmer is for the system. */
export const strengthSetting = (index: number): string => `skimmer ${index} strength`
/** Setting that a lever multiplies. */
export const foamFactorSetting = 'foam factor'

export const skimmersOf = (system: System) =>
  system.equipment
    .filter((item): item is Skimmer => item.kind === 'skimmer')
    .map((skimmer, index) => ({ name: `skimmer ${index + 1}`, of: { system, skimmer, index } }))

/** What every formula about foam reads: is it running, how large is it for the tank, a lever. */
export const skimmerReads = {
  running: setting<Running>(
    ({ index }) => runningSetting(index),
    '1',
    () => 1,
  ),
  strength: setting<Running>(
    ({ index }) => strengthSetting(index),
    '1',
    ({ skimmer, system }) => (skimmer.rated_for_L === undefined ? 1 : skimmer.rated_for_L / volumeOf(system)),
  ),
  factor: setting<Running>(foamFactorSetting, '1', () => 1),
}

export const foamFractionation = process<Running>({
  id: 'foam-fractionation',
  title: 'Foam fractionation',
  says: 'Foam takes particles and the organics that gather at a bubble; nitrate and phosphate it leaves.',
  source: 'feldman-2009',
  each: skimmersOf,
  reads: skimmerReads,
  parameters: { removal: fact('foam.k.tank', 'd⁻¹') },
  transfers: [
    carry({
      from: water.particles,
      to: outside.skimmate,
      atoms: ['N', 'P', 'C'],
      rate: 'removal * strength * running * factor',
    }),
    carry({
      from: water.skimmable,
      to: outside.skimmate,
      atoms: ['N', 'P', 'C'],
      rate: 'removal * strength * running * factor',
    }),
  ],
})
