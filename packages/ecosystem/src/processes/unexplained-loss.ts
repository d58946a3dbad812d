import { convert } from '@holdfast/quantities'
import { outside, water } from '../accounts/index.ts'
import { takesNutrients } from '../assemble/not-modelled.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import type { System, WaterChangeRoutine } from '../system.ts'
import { type InSystem, nitrate, phosphate, wettedArea } from './readings.ts'

/** What feed, top-off and the routine of changes bring in today, µmol/d of the atom. */
function broughtIn(system: System, atom: 'N' | 'P'): number {
  const fed = system.feeds.reduce(
    (sum, feed) =>
      sum +
      feed.g_per_day *
        convert(atom === 'N' ? feed.N_mass_fraction : feed.P_mass_fraction, `g ${atom} g⁻¹`, 'µmol g⁻¹'),
    0,
  )
  const routine = system.equipment.find((item): item is WaterChangeRoutine => item.kind === 'water change')
  const newWater = system.evaporation_L_per_day + (routine ? routine.volume_L / routine.every_days : 0)
  const { NO3_mg_L, PO4_mg_L } = system.source_water
  return (
    fed +
    newWater *
      convert(atom === 'N' ? NO3_mg_L : PO4_mg_L, `mg ${atom === 'N' ? 'NO3' : 'PO4'} L⁻¹`, 'µmol L⁻¹')
  )
}

/**
 * Stands in for what is not modelled yet. Without it the readings of a tank with corals or sand would
 * have to be explained by the processes there are, and their parameters would learn what is not so. It
 * saturates, as uptake and denitrification do, so it does not follow the water up, and the water's way to
 * the surfaces caps it.
 */
export const unexplainedLoss = process<InSystem>({
  id: 'unexplained-loss',
  title: 'Not explained yet',
  says: 'What leaves the water by ways that are not modelled yet: sand and rock, corals, filters. Only your readings tell how much.',
  source: 'holdfast-estimate',
  each: (system) => (takesNutrients(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    nitrate,
    phosphate,
    wetted: setting('wetted area', 'm²', ({ system }) => wettedArea(system)),
    nitrogenIn: setting('nitrogen brought in', 'µmol d⁻¹', ({ system }) => broughtIn(system, 'N')),
    phosphorusIn: setting('phosphorus brought in', 'µmol d⁻¹', ({ system }) => broughtIn(system, 'P')),
  },
  parameters: {
    lossOfN: fact('unexplained.nitrate', '1'),
    halfNitrate: fact('den.ks', 'µmol L⁻¹'),
    lossOfP: fact('unexplained.phosphate', '1'),
    halfPhosphate: fact('unexplained.half_phosphate', 'µmol L⁻¹'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  transfers: [
    move({
      atom: 'N',
      from: water.nitrate,
      to: outside.unexplained,
      rate: 'least(lossOfN * nitrogenIn * monod(nitrate, halfNitrate), transferN * wetted * nitrate)',
    }),
    move({
      atom: 'P',
      from: water.phosphate,
      to: outside.unexplained,
      rate: 'least(lossOfP * phosphorusIn * monod(phosphate, halfPhosphate), transferP * wetted * phosphate)',
    }),
  ],
})
