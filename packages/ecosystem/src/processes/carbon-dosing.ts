import type { FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { outside, water } from '../accounts/index.ts'
import { move, process, setting } from '../declare/index.ts'
import type { CarbonSubstance, OrganicCarbonDosing, System } from '../system.ts'
import type { InSystem } from './readings.ts'

/** Setting that holds the organic carbon that is dosed, µmol/d. */
export const dosedCarbonSetting = 'dosed carbon'
/** Setting that a lever multiplies. */
export const carbonFactorSetting = 'carbon dose factor'

/** The dosing of organic carbon of a system; a second one is added to the first by the keeper. */
export const carbonDosingOf = ({ equipment }: System): OrganicCarbonDosing | undefined =>
  equipment.find((item): item is OrganicCarbonDosing => item.kind === 'organic carbon dosing')

/** µmol of carbon in millilitres of a substance. */
export function carbonIn(substance: CarbonSubstance, volume_mL: number, facts: FactsOfSystem): number {
  const density = substance === 'ethanol' ? 'cd.density.ethanol' : 'cd.density.vinegar'
  return volume_mL * convert(facts.typical(density), 'g C mL⁻¹', 'µmol mL⁻¹')
}

/** What is dosed on the first day: a schedule begins by its own days. */
const dosedAtFirst = (dosing: OrganicCarbonDosing | undefined, facts: FactsOfSystem): number =>
  dosing && !dosing.schedule ? carbonIn(dosing.substance ?? 'ethanol', dosing.mL_per_day ?? 0, facts) : 0

export const carbonDosing = process<InSystem>({
  id: 'carbon-dosing',
  title: 'Dosing of organic carbon',
  says: 'Ethanol, vinegar or acetate feeds bacteria; it brings no nitrogen and no phosphorus.',
  source: 'mass balance',
  each: (system) => (carbonDosingOf(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    dosed: setting(dosedCarbonSetting, 'µmol d⁻¹', ({ system }, facts) =>
      dosedAtFirst(carbonDosingOf(system), facts),
    ),
    factor: setting(carbonFactorSetting, '1', () => 1),
  },
  parameters: {},
  transfers: [move({ atom: 'C', from: outside.dose, to: water.labile, rate: 'dosed * factor' })],
})
