import { convert } from '@holdfast/quantities'
import { bed, water } from '../accounts/index.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import type { PhosphateBinder, System } from '../system.ts'
import { type InSystem, phosphate } from './readings.ts'

interface Binding extends InSystem {
  readonly binder: PhosphateBinder
}

/** Setting that holds the lanthanum that is dripped in, µmol/d. */
export const lanthanumSetting = 'dosed lanthanum'

export const bindersOf = (system: System) =>
  system.equipment
    .filter((item): item is PhosphateBinder => item.kind === 'phosphate binder')
    .slice(0, 1)
    .map((binder) => ({ name: '', of: { system, binder } }))

/** µmol of lanthanum in so many mg. */
export const lanthanum = (mass_mg: number): number => convert(mass_mg, 'mg La', 'µmol')

export const phosphateBinding = process<Binding>({
  id: 'phosphate-binding',
  title: 'Binding of phosphate by lanthanum',
  says: 'Lanthanum makes a fine solid with phosphate; it stays in the system unless a fine filter takes it.',
  source: 'holdfast-estimate',
  each: bindersOf,
  reads: {
    phosphate,
    dosed: setting(lanthanumSetting, 'µmol d⁻¹', ({ binder }) => lanthanum(binder.La_mg_per_day)),
  },
  parameters: { efficiency: fact('la.efficiency', '1'), half: fact('la.half_phosphate', 'µmol L⁻¹') },
  transfers: [
    move({
      atom: 'P',
      from: water.phosphate,
      to: bed.precipitate,
      rate: 'dosed * efficiency * monod(phosphate, half)',
    }),
  ],
})
