import { type FactsOfSystem, finned, type Grazer } from '@holdfast/facts'
import { bodiesOf, livingOf } from '../accounts/index.ts'
import { amount, fact, setting, state } from '../declare/index.ts'
import type { Animals, System } from '../system.ts'
import type { InSystem } from './readings.ts'

/** All animals of one taxon of grazers that is known of. */
export interface Member extends InSystem {
  readonly taxon: string
  readonly animal: Grazer
  /** How the description names them first. */
  readonly animals: Animals
  readonly count: number
  /** Of one animal on the first day, g. */
  readonly mass_g: number
}

/** The crew, taxon by taxon, in the order of the description. */
export function crewOf(system: System, { grazer }: Pick<FactsOfSystem, 'grazer'>): readonly Member[] {
  const taxa = [...new Set(system.animals.flatMap(({ taxon }) => (taxon === undefined ? [] : [taxon])))]
  return taxa.flatMap((taxon) => {
    const animal = grazer(taxon)
    if (!animal) return []
    const entries = system.animals.filter((one) => one.taxon === taxon)
    const count = entries.reduce((sum, one) => sum + one.count, 0)
    const mass = entries.reduce((sum, one) => sum + one.count * (one.mass_g ?? animal.wetMass_g), 0)
    return [
      {
        system,
        taxon,
        animal,
        animals: entries[0],
        count,
        mass_g: count > 0 ? mass / count : animal.wetMass_g,
      },
    ]
  })
}

export const namedCrew = (system: System, facts: FactsOfSystem) =>
  crewOf(system, facts).map((of) => ({ name: of.taxon, of }))

const contents = {
  N: ['fish.body_n', 'crew.body_n.shelled'],
  P: ['fish.body_p', 'crew.body_p.shelled'],
  C: ['fish.body_c', 'crew.body_c.shelled'],
} as const

/** Fact of what a gram of its body holds. */
export function bodyFact({ animal }: Pick<Member, 'animal'>, atom: keyof typeof contents): string {
  const [fish, shelled] = contents[atom]
  return finned(animal.group) ? fish : shelled
}

const content = (atom: keyof typeof contents) =>
  fact<Pick<Member, 'animal'>>((member) => bodyFact(member, atom), 'µmol g⁻¹')

export const bodyFacts = { bodyN: content('N'), bodyP: content('P'), bodyC: content('C') }

type OfTaxon = Pick<Member, 'taxon' | 'animal'>

/** What formulas read of the animals of a taxon. */
export const living = state<Pick<Member, 'taxon'>>(({ taxon }) => livingOf(taxon), '1')
const heldN = amount<Pick<Member, 'taxon'>>(({ taxon }) => bodiesOf(taxon), 'N')

/** What is kept of food is growth towards adult size; grown animals give back all they absorb. */
export const growth = {
  reads: {
    held: heldN,
    grown: setting<OfTaxon>(
      ({ taxon }) => `grown mass ${taxon}`,
      'g',
      ({ animal }) => animal.wetMass_g,
    ),
  },
  terms: {
    grownN: { is: 'living * grown * bodyN', unit: 'µmol' },
    growing: { is: 'kept * part(positive(grownN - held), grownN)', unit: '1' },
  },
} as const

/** Share of what an animal swallows that does not end as faeces. */
export const absorbed = {
  absorbedC: setting<OfTaxon>(
    ({ taxon }) => `absorbed C ${taxon}`,
    '1',
    ({ animal }) => animal.assimilationOrganic,
  ),
  absorbedN: setting<OfTaxon>(
    ({ taxon }) => `absorbed N ${taxon}`,
    '1',
    ({ animal }) => animal.assimilationNitrogen,
  ),
}
