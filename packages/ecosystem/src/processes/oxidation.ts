import { water } from '../accounts/index.ts'
import type { Account, Process } from '../declare/index.ts'
import { amount, concentration, fact, gathered, process, split } from '../declare/index.ts'
import { type Group, habitat, inSystem } from './nitrifiers.ts'
import { temperature } from './readings.ts'

/** One step of nitrification: which groups oxidise what into what. */
export interface Step {
  readonly id: string
  readonly title: string
  readonly says: string
  readonly groups: Parameters<typeof inSystem>[1]
  readonly from: Account
  readonly into: Account
  /** The two groups that share the surface. */
  readonly rich: Account
  readonly poor: Account
}

/** Sum of the ammonia that all oxidisers take, for what happens to it inside rock. */
export const oxidisedAmmonia = 'oxidised ammonia'
/** Share of the room of nitrifiers that others hold. */
export const crowding = 'crowding'

/** Both steps grow on what they oxidise, on the same surface, by the same formula. */
export const oxidation = ({ id, title, says, groups, from, into, rich, poor }: Step): Process =>
  process<Group>({
    id,
    title,
    says,
    source: 'nijhof-bovendeur-1990',
    each: (system) => inSystem(system, groups),
    reads: {
      substrate: concentration(from, 'N'),
      oxidisers: amount(({ group }) => group, 'N'),
      rich: amount(rich, 'N'),
      poor: amount(poor, 'N'),
      temperature,
      crowded: gathered(crowding, () => 'film', '1'),
      ...habitat,
    },
    parameters: {
      fastest: fact(({ fastestFact }) => fastestFact, 'd⁻¹'),
      half: fact(({ halfFact }) => halfFact, 'µmol L⁻¹'),
      yield: fact(({ yieldFact }) => yieldFact, '1'),
      warming: fact('nit.q10', '1'),
      rockArea: fact('nit.area.rock', 'm² kg⁻¹'),
      sandArea: fact('nit.area.sand', 'm² kg⁻¹'),
      areal: fact('nit.areal.max_sea', 'µmol m⁻² d⁻¹'),
      transfer: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
      fastestRich: fact(({ richFact }) => richFact, 'd⁻¹'),
    },
    terms: {
      capacity: { is: 'fastest * q10(warming, temperature) * oxidisers / yield', unit: 'µmol d⁻¹' },
      supply: { is: 'transfer * planarArea', unit: 'L d⁻¹' },
      // The most that the surface carries: what oxidises the areal maximum at full speed.
      room: {
        is: 'positive(1 - crowded - (rich + poor) / (areal * (rockMass * rockArea + sandMass * sandArea) * yield / fastestRich))',
        unit: '1',
      },
      // The water's way to the surface and the cells' own half-saturation, as resistances in a row.
      oxidised: { is: 'capacity * monod(substrate, half + capacity / supply)', unit: 'µmol d⁻¹' },
    },
    ...(from.id === water.ammonia.id
      ? { gathers: { [oxidisedAmmonia]: { key: () => from.id, sum: 'oxidised', unit: 'µmol d⁻¹' } } }
      : {}),
    transfers: [
      split({
        atom: 'N',
        from,
        rate: 'oxidised',
        into: [
          { to: ({ group }) => group, share: 'yield * room' },
          { to: into, share: 'rest' },
        ],
      }),
    ],
  })
