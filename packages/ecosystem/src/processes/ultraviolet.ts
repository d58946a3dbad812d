import type { FactsOfSystem } from '@holdfast/facts'
import { water } from '../accounts/index.ts'
import { carry, fact, process, setting } from '../declare/index.ts'
import type { System, UltravioletLamp } from '../system.ts'
import { carbonDosingOf } from './carbon-dosing.ts'
import { type InSystem, volumeOf } from './readings.ts'

interface Lamp extends InSystem {
  readonly lamp: UltravioletLamp
  readonly index: number
}

/** Setting that holds how often the water passes the lamp, a day. */
export const ultravioletSetting = (index: number): string => `ultraviolet lamp ${index} passes`

const passesUnder = ({ system, lamp }: Lamp, facts: FactsOfSystem): number =>
  lamp.flow_L_per_hour === undefined
    ? facts.typical('uv.passes')
    : (24 * lamp.flow_L_per_hour) / volumeOf(system)

/** Of what the model holds only bacteria swim past the lamp; without dosed carbon they have no account. */
export const lampsOf = (system: System) =>
  carbonDosingOf(system)
    ? system.equipment
        .filter((item): item is UltravioletLamp => item.kind === 'ultraviolet lamp')
        .map((lamp, index) => ({ name: `lamp ${index + 1}`, of: { system, lamp, index } }))
    : []

export const ultraviolet = process<Lamp>({
  id: 'ultraviolet',
  title: 'Ultraviolet lamp',
  says: 'The lamp kills cells that drift past it; they become waste and are not out of the system.',
  source: 'holdfast-estimate',
  each: lampsOf,
  reads: {
    passes: setting(({ index }) => ultravioletSetting(index), 'd⁻¹', passesUnder),
  },
  parameters: { kill: fact('uv.kill', '1'), adrift: fact('cd.adrift', '1') },
  transfers: [
    carry({
      from: water.bacteria,
      to: water.particles,
      atoms: ['N', 'P', 'C'],
      rate: 'adrift * passes * kill',
    }),
  ],
})
