import {
  exposed,
  type FactsOfSystem,
  holds,
  hunting,
  type KnownAnimals,
  type Neighbour,
  neighboursNamed,
  predationId,
} from '@holdfast/facts'
import { animals, bed, bodiesOf, livingOf, newcomersOf, outside, water } from '../accounts/index.ts'
import { amount, change, fact, process, setting, split, state } from '../declare/index.ts'
import type { Animals, System } from '../system.ts'
import { crewOf, living, type Member } from './crew.ts'

/** A neighbour that hunts, and a taxon of the crew of which it gets some or all. */
interface Hunted extends Member {
  readonly hunter: Neighbour
}

/** How many of a hunter there are; the log adds to it. */
export const huntersSetting = (neighbour: string): string => `hunters ${neighbour}`

/** The rows of neighbours that an animal of the description goes by: by its taxon, or the one that is like; else by its kind. */
export function rowsOf(
  { taxon, kind }: Pick<Animals, 'taxon' | 'kind'>,
  { grazer }: Pick<KnownAnimals, 'grazer'>,
): readonly Neighbour[] {
  const byTaxon = taxon === undefined ? [] : neighboursNamed(grazer(taxon)?.like ?? taxon)
  return byTaxon.length > 0 ? byTaxon : neighboursNamed(kind)
}

/** The vessel in which a threat that asks for room is judged: the largest, by its glass where that is told. */
const roomiest = ({ vessels }: System): number =>
  Math.max(...vessels.map(({ volume_L, glass_volume_L }) => glass_volume_L ?? volume_L))

/** Does an animal of this system hunt: it may be too small for that, or have room enough. */
const hunts = (one: Animals, neighbour: Neighbour, system: System): boolean => {
  const threat = hunting(neighbour)
  return threat !== undefined && holds(threat, { size_cm: one.adult_size_cm, volume_L: roomiest(system) })
}

/** All hunters of a system, those included that are still to come. */
const huntersOf = (system: System, facts: FactsOfSystem): readonly Neighbour[] => [
  ...new Set(system.animals.flatMap((one) => rowsOf(one, facts).filter((row) => hunts(one, row, system)))),
]

const countOf = ({ hunter, system }: Hunted, facts: FactsOfSystem): number =>
  system.animals
    .filter((one) => rowsOf(one, facts).includes(hunter) && hunts(one, hunter, system))
    .reduce((sum, { count }) => sum + count, 0)

const exposure = ({ hunter, animal, animals: kept }: Hunted): number => {
  const threat = hunting(hunter)
  return threat ? exposed(threat, animal, kept.adult_size_cm) : 0
}

export const huntedOf = (
  system: System,
  facts: FactsOfSystem,
): readonly { readonly name: string; readonly of: Hunted }[] =>
  huntersOf(system, facts).flatMap((hunter) =>
    crewOf(system, facts)
      .map((member) => ({ name: `${hunter.title} on ${member.taxon}`, of: { ...member, hunter } }))
      .filter(({ of }) => exposure(of) > 0),
  )

/**
 * The tables know the chance of a loss where a hunter lives, not how it goes with their number, so two of a kind
 * take no more than one. What is swallowed goes the way of feed; the rest is a dead body.
 */
export const predation = process<Hunted>({
  id: 'predation',
  title: 'Grazers eaten by tank mates',
  says: 'Wrasses, triggers, puffers, crabs and others eat of the crew what they can crush or swallow; most of it comes back to the water.',
  source: 'keepers-practice',
  each: huntedOf,
  reads: {
    living,
    newcomers: state(({ taxon }) => newcomersOf(taxon), '1'),
    nitrogen: amount(({ taxon }) => bodiesOf(taxon), 'N'),
    phosphorus: amount(({ taxon }) => bodiesOf(taxon), 'P'),
    carbon: amount(({ taxon }) => bodiesOf(taxon), 'C'),
    hunters: setting(({ hunter }) => huntersSetting(hunter.key), '1', countOf),
    /** Share of the animals that is small enough, soft enough or slow enough for it. */
    exposed: setting(({ hunter, taxon }) => `${hunter.key} gets ${taxon}`, '1', exposure),
  },
  parameters: {
    takes: fact(({ hunter }) => predationId(hunter.key), 'd⁻¹'),
    swallowed: fact('crew.swallowed', '1'),
    digestedN: fact('fish.digest_n', '1'),
    digestedP: fact('fish.digest_p', '1'),
    digestedC: fact('fish.digest_c', '1'),
    keptN: fact('fish.retain_n.adult', '1'),
    keptP: fact('fish.retain_p.adult', '1'),
    keptC: fact('fish.retain_c.adult', '1'),
    asAmmonia: fact('fish.tan_share', '1'),
    leached: fact('min.leach_p.faeces', '1'),
  },
  terms: { taken: { is: 'takes * exposed * least(hunters, 1)', unit: 'd⁻¹' } },
  transfers: [
    split({
      atom: 'N',
      from: ({ taxon }) => bodiesOf(taxon),
      rate: 'taken * nitrogen',
      into: [
        { to: animals.fish, share: 'swallowed * keptN' },
        { to: water.ammonia, share: 'swallowed * (digestedN - keptN) * asAmmonia' },
        { to: water.labile, share: 'swallowed * (digestedN - keptN) * (1 - asAmmonia)' },
        { to: water.particles, share: 'swallowed * (1 - digestedN)' },
        { to: bed.fast, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: ({ taxon }) => bodiesOf(taxon),
      rate: 'taken * phosphorus',
      into: [
        { to: animals.fish, share: 'swallowed * keptP' },
        { to: water.phosphate, share: 'swallowed * (digestedP - keptP + (1 - digestedP) * leached)' },
        { to: water.particles, share: 'swallowed * (1 - digestedP) * (1 - leached)' },
        { to: bed.fast, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: ({ taxon }) => bodiesOf(taxon),
      rate: 'taken * carbon',
      into: [
        { to: animals.fish, share: 'swallowed * keptC' },
        { to: outside.inorganicCarbon, share: 'swallowed * (digestedC - keptC)' },
        { to: water.particles, share: 'swallowed * (1 - digestedC)' },
        { to: bed.fast, share: 'rest' },
      ],
    }),
    change({ state: ({ taxon }) => livingOf(taxon), rate: '-taken * living' }),
    change({ state: ({ taxon }) => newcomersOf(taxon), rate: '-taken * newcomers' }),
  ],
})
