import { bed, outside, water } from '../accounts/index.ts'
import { amount, concentration, fact, move, process, setting } from '../declare/index.ts'
import { type InSystem, rockArea, sandArea } from './readings.ts'

const glassArea = ({ system }: InSystem): number =>
  system.surfaces.filter(({ kind }) => kind === 'glass').reduce((sum, { area_m2 }) => sum + area_m2, 0)

/** Diatoms live on it; without a source of it they would never fade, and without one they could not last. */
export const silicate = process<InSystem>({
  id: 'silicate',
  title: 'Silicate',
  says: 'Sand, rock and glass give off a little silicate, and the shells of dead diatoms dissolve.',
  source: 'holdfast-estimate',
  each: (system) => [{ name: '', of: { system } }],
  reads: {
    dissolved: concentration(water.silicate, 'Si'),
    opal: amount(bed.silica, 'Si'),
    sandArea: setting('sand area', 'm²', ({ system }, facts) => sandArea(system, facts)),
    rockArea: setting('rock area', 'm²', ({ system }, facts) => rockArea(system, facts)),
    glassArea: setting('glass area', 'm²', glassArea),
  },
  parameters: {
    fromSand: fact('si.release.sand', 'µmol m⁻² d⁻¹'),
    fromRock: fact('si.release.rock', 'µmol m⁻² d⁻¹'),
    fromGlass: fact('si.release.glass', 'µmol m⁻² d⁻¹'),
    solubility: fact('si.solubility', 'µmol L⁻¹'),
    dissolves: fact('si.k.opal', 'd⁻¹'),
  },
  terms: { unsaturated: { is: 'positive(1 - dissolved / solubility)', unit: '1' } },
  transfers: [
    move({
      atom: 'Si',
      from: outside.minerals,
      to: water.silicate,
      rate: 'unsaturated * (fromSand * sandArea + fromRock * rockArea + fromGlass * glassArea)',
    }),
    move({ atom: 'Si', from: bed.silica, to: water.silicate, rate: 'unsaturated * dissolves * opal' }),
  ],
})
