import { outside, water } from '../accounts/index.ts'
import { move, once, process, setting } from '../declare/index.ts'

/** Settings that a dose fills: µmol of each ion. */
export const dosed = {
  ammonia: 'dosed ammonia',
  nitrate: 'dosed nitrate',
  phosphate: 'dosed phosphate',
} as const

export const dose = process<undefined>({
  id: 'dose',
  title: 'Dose',
  says: 'A weighed compound brings its nitrogen or phosphorus.',
  source: 'mass balance',
  event: true,
  each: () => once(true),
  reads: {
    ammonia: setting(dosed.ammonia, 'µmol', () => 0),
    nitrate: setting(dosed.nitrate, 'µmol', () => 0),
    phosphate: setting(dosed.phosphate, 'µmol', () => 0),
  },
  parameters: {},
  transfers: [
    move({ atom: 'N', from: outside.dose, to: water.ammonia, rate: 'ammonia' }),
    move({ atom: 'N', from: outside.dose, to: water.nitrate, rate: 'nitrate' }),
    move({ atom: 'P', from: outside.dose, to: water.phosphate, rate: 'phosphate' }),
  ],
})
