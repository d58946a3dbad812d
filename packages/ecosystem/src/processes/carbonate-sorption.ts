import { rock, water } from '../accounts/index.ts'
import { amount, exchange, fact, process } from '../declare/index.ts'
import { habitat } from './nitrifiers.ts'
import { hasRockOrSand, type InSystem, phosphate } from './readings.ts'

/** Load at 1 µmol/L is what the linear partition says; away from it the isotherm bends. */
export const carbonateSorption = process<InSystem>({
  id: 'carbonate-sorption',
  title: 'Phosphate on rock and sand',
  says: 'Carbonate takes phosphate up from rich water and gives it back to poor water, a part within hours, a part over weeks.',
  source: 'so-2011',
  each: (system) => (hasRockOrSand(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    phosphate,
    heldFast: amount(rock.sorbedFast, 'P'),
    heldSlow: amount(rock.sorbedSlow, 'P'),
    reference: { read: 'setting', id: 'sorption reference', unit: 'µmol L⁻¹', value: () => 1 },
    ...habitat,
  },
  parameters: {
    partition: fact('sorb.kd.sand', 'L kg⁻¹'),
    exponent: fact('sorb.freundlich.n', '1'),
    rockShare: fact('sorb.rock_share', '1'),
    fastShare: fact('sorb.fast_share', '1'),
    fast: fact('sorb.k_fast', 'd⁻¹'),
    slow: fact('sorb.k_slow', 'd⁻¹'),
    transfer: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  terms: {
    fullLoad: {
      is: '(sandMass + rockShare * rockMass) * partition * reference * freundlich(phosphate, reference, exponent)',
      unit: 'µmol',
    },
    supply: { is: 'transfer * planarArea * phosphate', unit: 'µmol d⁻¹' },
  },
  transfers: [
    exchange({
      atom: 'P',
      from: water.phosphate,
      to: rock.sorbedFast,
      rate: 'least(fast * (fastShare * fullLoad - heldFast), supply)',
    }),
    exchange({
      atom: 'P',
      from: water.phosphate,
      to: rock.sorbedSlow,
      rate: 'least(slow * ((1 - fastShare) * fullLoad - heldSlow), supply)',
    }),
  ],
})
