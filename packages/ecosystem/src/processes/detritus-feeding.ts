import type { FactsOfSystem } from '@holdfast/facts'
import { bed, bodiesOf, outside, water } from '../accounts/index.ts'
import { amount, fact, process, setting, split } from '../declare/index.ts'
import type { System } from '../system.ts'
import { appetite, reachedOf } from './appetite.ts'
import { absorbed, bodyFacts, crewOf, growth, type Member } from './crew.ts'

/** How willingly it takes settled waste. */
const liking = ({ taxon }: Member, { taste }: FactsOfSystem): number => taste(taxon, 'detritus').preference

/** Share of the floor that it gets to: of the sand, or of all surfaces where none of sand is described. */
function reachedFloor(member: Member, facts: FactsOfSystem): number {
  const { surfaces } = member.system
  const sand = surfaces.filter(({ kind }) => kind === 'sand')
  const floor = sand.length > 0 ? sand : surfaces
  const area = floor.reduce((sum, { area_m2 }) => sum + area_m2, 0)
  return area > 0 ? reachedOf(floor, member, facts) / area : 0
}

const namedFeeders = (system: System, facts: FactsOfSystem) =>
  crewOf(system, facts)
    .filter((member) => liking(member, facts) > 0)
    .map((of) => ({ name: of.taxon, of }))

/**
 * Conchs, ceriths, bristletooths and many others live on settled waste as much as on algae. It lies on
 * the floor, and is a part of the food over which they share their appetite.
 */
export const detritusFeeding = process<Member>({
  id: 'detritus-feeding',
  title: 'Feeding on settled waste',
  says: 'Many grazers eat settled waste beside algae; what they absorb comes back to the water, the rest stays waste.',
  source: 'holdfast-estimate',
  slow: true,
  each: namedFeeders,
  reads: {
    ...appetite.reads,
    ...absorbed,
    nitrogen: amount(bed.fast, 'N'),
    phosphorus: amount(bed.fast, 'P'),
    carbon: amount(bed.fast, 'C'),
    ...growth.reads,
    taste: setting(({ taxon }) => `taste ${taxon} detritus`, '1', liking),
    within: setting(({ taxon }) => `waste within reach of ${taxon}`, '1', reachedFloor),
  },
  parameters: {
    ...appetite.parameters,
    carbonContent: fact('grazing.detritus_carbon', 'µmol g⁻¹'),
    bodyN: bodyFacts.bodyN,
    kept: fact('crew.kept', '1'),
  },
  gathers: {
    food: { key: ({ taxon }) => taxon, sum: 'taste * edible', unit: 'g' },
    relish: { key: ({ taxon }) => taxon, sum: 'taste * taste * edible', unit: 'g' },
  },
  terms: {
    mass: { is: 'carbon / carbonContent', unit: 'g' },
    edible: { is: 'within * mass', unit: 'g' },
    ...appetite.terms,
    ...growth.terms,
    eaten: { is: 'part(intake * taste * part(taste * edible, food), mass)', unit: 'd⁻¹' },
  },
  transfers: [
    split({
      atom: 'N',
      from: bed.fast,
      rate: 'eaten * absorbedN * nitrogen',
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'growing' },
        { to: water.ammonia, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: bed.fast,
      rate: 'eaten * absorbedN * phosphorus',
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'growing' },
        { to: water.phosphate, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: bed.fast,
      rate: 'eaten * absorbedC * carbon',
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'growing' },
        { to: outside.inorganicCarbon, share: 'rest' },
      ],
    }),
  ],
})
