import { outside, water } from '../accounts/index.ts'
import { fact, gathered, move, process, setting } from '../declare/index.ts'
import { habitat } from './nitrifiers.ts'
import { oxidisedAmmonia } from './oxidation.ts'
import { hasRockOrSand, type InSystem } from './readings.ts'
import { porousRockShare } from './rock-kinds.ts'

/** Of each ammonia that goes into porous rock a part never comes out as nitrate; the water does not show it. */
export const rockNitrogenLoss = process<InSystem>({
  id: 'rock-nitrogen-loss',
  title: 'Nitrogen gas out of rock',
  says: 'Inside porous rock nitrate is used where it is made: a part of the ammonia that rock oxidises leaves as nitrogen gas and never shows as nitrate.',
  source: 'seitzinger-1988',
  each: (system) => (hasRockOrSand(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    oxidised: gathered(oxidisedAmmonia, () => water.ammonia.id, 'µmol d⁻¹'),
    porous: setting('porous rock share', '1', ({ system }) => porousRockShare(system.rock)),
    rockMass: habitat.rockMass,
    sandMass: habitat.sandMass,
  },
  parameters: {
    share: fact('den.inside_rock_share', '1'),
    rockArea: fact('nit.area.rock', 'm² kg⁻¹'),
    sandArea: fact('nit.area.sand', 'm² kg⁻¹'),
  },
  terms: {
    inRock: {
      is: 'porous * part(rockMass * rockArea, rockMass * rockArea + sandMass * sandArea)',
      unit: '1',
    },
    // No rock turns all of it into gas: a share drawn as 1, in a system without sand, would divide by nothing.
    lost: { is: 'least(share * inRock, 0.99)', unit: '1' },
  },
  transfers: [
    // On top of what is oxidised into nitrite: of all that goes in, `lost` leaves as gas.
    move({ atom: 'N', from: water.ammonia, to: outside.air, rate: 'oxidised * lost / (1 - lost)' }),
  ],
})
