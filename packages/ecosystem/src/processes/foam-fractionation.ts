import type { FactsOfSystem } from '@holdfast/facts'
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
/** Settings that are 1 with the air and the cup of the description. */
export const airSetting = (index: number): string => `skimmer ${index} air`
export const cupSetting = (index: number): string => `skimmer ${index} cup`
/** Setting that a lever multiplies. */
export const foamFactorSetting = 'foam factor'

const airOf = ({ skimmer, system }: Running, facts: FactsOfSystem): number =>
  skimmer.air_L_per_hour ?? facts.typical('foam.air') * (skimmer.rated_for_L ?? volumeOf(system))

const intervalOf = ({ skimmer }: Running, facts: FactsOfSystem): number =>
  skimmer.cup_emptied_every_days ?? facts.typical('foam.cup_interval')

/** Foam with so much air (L/h), relative to that of the description: bubbles carry in proportion to their number. */
export const foamByAir = (running: Running, air_L_per_hour: number, facts: FactsOfSystem): number =>
  air_L_per_hour / airOf(running, facts)

/** Foam with cup and neck cleaned every so many days, relative to the description: fat in the neck breaks foam. */
export const foamByCup = (running: Running, every_days: number, facts: FactsOfSystem): number => {
  const fouling = facts.typical('foam.fouling')
  return (1 + fouling * intervalOf(running, facts)) / (1 + fouling * every_days)
}

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
  air: setting<Running>(
    ({ index }) => airSetting(index),
    '1',
    (running, facts) => foamByAir(running, airOf(running, facts), facts),
  ),
  cup: setting<Running>(
    ({ index }) => cupSetting(index),
    '1',
    (running, facts) => foamByCup(running, intervalOf(running, facts), facts),
  ),
  factor: setting<Running>(foamFactorSetting, '1', () => 1),
}

/** How much the foam takes, relative to a skimmer that is sized for the tank. */
export const skimming = { is: 'strength * air * cup * running * factor', unit: '1' }

export const foamFractionation = process<Running>({
  id: 'foam-fractionation',
  title: 'Foam fractionation',
  says: 'Foam takes particles and the organics that gather at a bubble; nitrate and phosphate it leaves.',
  source: 'feldman-2009',
  each: skimmersOf,
  reads: skimmerReads,
  parameters: { removal: fact('foam.k.tank', 'd⁻¹') },
  terms: { skimming },
  transfers: [
    carry({
      from: water.particles,
      to: outside.skimmate,
      atoms: ['N', 'P', 'C'],
      rate: 'removal * skimming',
    }),
    carry({
      from: water.skimmable,
      to: outside.skimmate,
      atoms: ['N', 'P', 'C'],
      rate: 'removal * skimming',
    }),
  ],
})
