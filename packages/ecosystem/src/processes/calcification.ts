import { bed, water } from '../accounts/index.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import { coralsOf, type LitCorals } from './coral-uptake.ts'
import { phosphate } from './readings.ts'

export const calcification = process<LitCorals>({
  id: 'calcification',
  title: 'Phosphorus in growing chalk',
  says: 'Corals build a little phosphate into their chalk, the more the richer the water.',
  source: 'lavigne-2010',
  each: coralsOf,
  reads: { phosphate, area: setting('area of corals', 'm²', ({ area_m2 }) => area_m2) },
  parameters: {
    chalk: fact('coral.chalk', 'mol m⁻² d⁻¹'),
    perPhosphate: fact('coral.chalk_p', 'L mol⁻¹'),
  },
  transfers: [
    move({
      atom: 'P',
      from: water.phosphate,
      to: bed.mineral,
      rate: 'area * chalk * perPhosphate * phosphate',
    }),
  ],
})
