import type { FactsOfSystem } from '@holdfast/facts'
import { outside, water } from '../accounts/index.ts'
import { change, fact, gathered, move, process, setting, state } from '../declare/index.ts'
import type { System, WaterChangeRoutine } from '../system.ts'
import { broughtBy } from './brought-by-water.ts'
import { fedNitrogen, fedPhosphorus } from './feeding.ts'
import { hasRockOrSand, type InSystem, nitrate, phosphate, wettedArea } from './readings.ts'

/** What top-off and the routine of changes bring in by the source water, µmol/d of the atom. */
function withNewWater(system: System, ion: 'NO3' | 'PO4', facts: FactsOfSystem): number {
  const routine = system.equipment.find((item): item is WaterChangeRoutine => item.kind === 'water change')
  const newWater = system.evaporation_L_per_day + (routine ? routine.volume_L / routine.every_days : 0)
  return newWater * broughtBy(system.source_water, ion, facts)
}

/** How strong the loss is, relative to the day on which a run begins. */
export const strength = {
  nitrate: {
    id: 'unexplained.nitrate',
    title: 'Strength of the loss of nitrate not explained yet',
    unit: '1',
  },
  phosphate: {
    id: 'unexplained.phosphate',
    title: 'Strength of the loss of phosphate not explained yet',
    unit: '1',
  },
} as const

/** How much of what takes phosphate has grown to the water it lives in, as a share of its most. */
export const grown = {
  id: 'unexplained.phosphate_grown',
  title: 'How far what takes phosphate unexplained has grown to the water',
  unit: '1',
} as const

/**
 * Stands in for what no process covers. Without it the readings would have to be explained by the processes
 * there are, and their parameters would learn what is not so. It saturates, as uptake does, so it does not
 * follow the water up, and the water's way to the surfaces caps it. Of phosphate it follows over months, as
 * sponges and films grow, so that it does not take over within weeks what another way out has ceased to
 * carry. It may fade or grow, as readings that rise for months ask of it.
 */
export const unexplainedLoss = process<InSystem>({
  id: 'unexplained-loss',
  title: 'Not explained yet',
  says: 'What leaves the water by ways that no process covers, such as sponges, films and chalk that settles out. Only your readings tell how much.',
  source: 'holdfast-estimate',
  each: (system) => (hasRockOrSand(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    nitrate,
    phosphate,
    wetted: setting('wetted area', 'm²', ({ system }) => wettedArea(system)),
    strengthN: state(strength.nitrate, '1'),
    strengthP: state(strength.phosphate, '1'),
    grownP: state(grown, '1'),
    fedN: gathered(fedNitrogen, () => 'all feeds', 'µmol d⁻¹'),
    fedP: gathered(fedPhosphorus, () => 'all feeds', 'µmol d⁻¹'),
    newN: setting('nitrogen of new water', 'µmol d⁻¹', ({ system }, facts) =>
      withNewWater(system, 'NO3', facts),
    ),
    newP: setting('phosphorus of new water', 'µmol d⁻¹', ({ system }, facts) =>
      withNewWater(system, 'PO4', facts),
    ),
  },
  parameters: {
    lossOfN: fact('unexplained.nitrate', '1'),
    halfNitrate: fact('den.ks', 'µmol L⁻¹'),
    lossOfP: fact('unexplained.phosphate', '1'),
    halfPhosphate: fact('unexplained.half_phosphate', 'µmol L⁻¹'),
    growth: fact('unexplained.phosphate_growth', 'd⁻¹'),
    driftN: fact('unexplained.nitrate_drift', 'd⁻¹'),
    driftP: fact('unexplained.phosphate_drift', 'd⁻¹'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  transfers: [
    move({
      atom: 'N',
      from: water.nitrate,
      to: outside.unexplained,
      rate: 'least(strengthN * lossOfN * (fedN + newN) * monod(nitrate, halfNitrate), transferN * wetted * nitrate)',
    }),
    move({
      atom: 'P',
      from: water.phosphate,
      to: outside.unexplained,
      rate: 'least(strengthP * lossOfP * (fedP + newP) * grownP, transferP * wetted * phosphate)',
    }),
    change({ state: strength.nitrate, rate: 'driftN * strengthN' }),
    change({ state: strength.phosphate, rate: 'driftP * strengthP' }),
    change({ state: grown, rate: 'growth * (monod(phosphate, halfPhosphate) - grownP)' }),
  ],
})
