import { ammoniumPk, unIonisedAmmoniaFraction } from '../ammonia/un-ionised-ammonia.ts'
import { pH } from '../ph/ph.ts'
import { onScale } from '../ph/ph-scales.ts'
import { trisBufferPHDelVallsDickson1998 } from '../ph/tris-buffer-delvalls-dickson-1998.ts'
import { form, type WaterQuantity } from './water-quantity.ts'

const scales = [
  ['pH_total', 'total'],
  ['pH_free', 'free'],
  ['pH_nbs', 'NBS'],
] as const

/** Ammonium and the scales of pH. */
export const ammoniaAndPHQuantities: readonly WaterQuantity[] = [
  {
    id: 'pK_ammonium',
    says: 'pK of ammonium on a scale of pH',
    unit: '1',
    forms: [
      form(['S', 't', 'method', 'pH_scale'], ({ S, t, method, pH_scale }) =>
        ammoniumPk(method, pH_scale, S, t),
      ),
    ],
    restsOn: [ammoniumPk],
  },
  {
    id: 'unionised_ammonia_fraction',
    says: 'part of total ammonia that is NH3',
    unit: '1',
    forms: scales.map(([name, scale]) =>
      form(['S', 't', name, 'method'], (given) =>
        unIonisedAmmoniaFraction(pH(scale, given[name]), given.S, given.t, given.method),
      ),
    ),
    restsOn: [unIonisedAmmoniaFraction],
  },
  {
    id: 'unionised_ammonia',
    says: 'NH3',
    unit: 'umol/L',
    forms: scales.map(([name, scale]) =>
      form(['S', 't', name, 'method', 'TAN_umol_L'], (given) => {
        const reading = pH(scale, given[name])
        return given.TAN_umol_L * unIonisedAmmoniaFraction(reading, given.S, given.t, given.method)
      }),
    ),
    restsOn: [unIonisedAmmoniaFraction],
  },
  {
    id: 'pH_free',
    says: 'pH on the free scale',
    unit: '1',
    forms: [
      form(
        ['S', 't', 'pH_total'],
        ({ S, t, pH_total }) => onScale(pH('total', pH_total), 'free', S, t).value,
      ),
    ],
    restsOn: [onScale],
  },
  {
    id: 'pH_nbs',
    says: 'pH as a probe set with NBS buffers reads it',
    unit: '1',
    forms: [
      form(['S', 't', 'pH_total'], ({ S, t, pH_total }) => onScale(pH('total', pH_total), 'NBS', S, t).value),
    ],
    restsOn: [onScale],
  },
  {
    id: 'pH_tris_buffer',
    says: 'pH of a tris buffer in sea water, total scale',
    unit: '1',
    forms: [form(['S', 't'], ({ S, t }) => trisBufferPHDelVallsDickson1998(S, t).value)],
    restsOn: [trisBufferPHDelVallsDickson1998],
  },
]
