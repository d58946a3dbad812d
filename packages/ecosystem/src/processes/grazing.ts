import { type FactsOfSystem, mouth } from '@holdfast/facts'
import { bodiesOf, outside, water } from '../accounts/index.ts'
import { change, fact, process, setting, split } from '../declare/index.ts'
import type { System } from '../system.ts'
import { appetite } from './appetite.ts'
import { absorbed, bodyFacts, crewOf, growth, type Member } from './crew.ts'
import { livesAt, reaches } from './reach.ts'
import {
  covering,
  type Growing,
  ofKind,
  ownCover,
  standFacts,
  standing,
  standsOf,
  standTerms,
  stored,
  tissueOf,
} from './stands.ts'

/** One taxon of the crew at one stand that it reaches and eats. */
export interface Mouth extends Growing, Member {}

type Bite = 'fullHeight' | 'floorHeight' | 'floorShare'

/** Fact of the animal's way of biting. */
const bite =
  (what: Bite) =>
  ({ animal }: Mouth): string =>
    mouth(animal.mouth)[what]

/** Upright and bubble forms tear more than they are swallowed. */
const torn = new Set(['macro', 'bryopsis', 'bubble'])

export const mouthsOf = (
  system: System,
  facts: FactsOfSystem,
): readonly { readonly name: string; readonly of: Mouth }[] =>
  crewOf(system, facts).flatMap((member) =>
    standsOf(system)
      .filter(
        ({ surface, stand }) =>
          livesAt(system, member.taxon, surface) &&
          reaches(surface, member.taxon, stand.patch, member.animals.adult_size_cm, facts) &&
          facts.taste(member.taxon, stand.kind).preference > 0,
      )
      .map((growing) => ({
        name: `${member.taxon} at ${growing.stand.kind} on ${growing.surface.id}, ${growing.stand.patch}`,
        of: { ...growing, ...member },
      })),
  )

export const grazing = process<Mouth>({
  id: 'grazing',
  title: 'Grazing',
  says: 'Each animal shares its appetite over the stands it reaches, by taste and by how much stands above the stubble; nearly all that is eaten comes back to the water.',
  source: 'holdfast-estimate',
  slow: true,
  each: mouthsOf,
  reads: {
    ...standing,
    ...covering,
    ...stored.reads,
    ...appetite.reads,
    ...growth.reads,
    ...absorbed,
    taste: setting(
      ({ taxon, stand }) => `taste ${taxon} ${stand.kind}`,
      '1',
      ({ taxon, stand }, { taste }) => taste(taxon, stand.kind).preference,
    ),
    /** 1 for kinds that a bite tears: part of them drifts off. */
    tears: setting(
      ({ stand }) => `${stand.kind} tears`,
      '1',
      ({ stand }) => (torn.has(stand.kind) ? 1 : 0),
    ),
  },
  parameters: {
    carbonContent: standFacts.carbonContent,
    ...appetite.parameters,
    stubble: fact(ofKind('stubble'), 'g m⁻²'),
    canopy: fact(ofKind('canopy_height'), 'mm'),
    biteFull: fact(bite('fullHeight'), 'mm'),
    biteLimit: fact(bite('floorHeight'), 'mm'),
    biteLeast: fact(bite('floorShare'), '1'),
    bodyN: bodyFacts.bodyN,
    kept: fact('crew.kept', '1'),
    tornOff: fact('grazing.torn_off', '1'),
    freesSurface: fact('grazing.frees_surface', '1'),
  },
  gathers: {
    food: { key: ({ taxon }) => taxon, sum: 'relished * edible', unit: 'g' },
    relish: { key: ({ taxon }) => taxon, sum: 'relished * relished * edible', unit: 'g' },
  },
  terms: {
    ...standTerms,
    ...stored.terms,
    // Height lessens the taste, and so the rate: a mouth that cannot reach up does not eat the same more slowly.
    relished: { is: 'taste * fallingLine(canopy * thickness, biteFull, biteLimit, biteLeast)', unit: '1' },
    edible: { is: 'positive(mass - stubble * covered)', unit: 'g' },
    ...appetite.terms,
    ...growth.terms,
    swallowed: { is: '1 - tears * tornOff', unit: '1' },
    // Share of the stand eaten in a day; taste stands twice: it caps the rate and divides the appetite.
    eaten: { is: 'part(intake * relished * part(relished * edible, food), mass)', unit: 'd⁻¹' },
  },
  transfers: [
    split<Mouth>({
      atom: 'N',
      from: tissueOf.N.from,
      rate: `eaten * ${tissueOf.N.amount}`,
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'swallowed * absorbedN * growing' },
        { to: water.ammonia, share: 'swallowed * absorbedN * (1 - growing)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split<Mouth>({
      atom: 'P',
      from: tissueOf.P.from,
      rate: `eaten * ${tissueOf.P.amount}`,
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'swallowed * absorbedN * growing' },
        { to: water.phosphate, share: 'swallowed * absorbedN * (1 - growing)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split<Mouth>({
      atom: 'C',
      from: tissueOf.C.from,
      rate: `eaten * ${tissueOf.C.amount}`,
      into: [
        { to: ({ taxon }) => bodiesOf(taxon), share: 'swallowed * absorbedC * growing' },
        { to: outside.inorganicCarbon, share: 'swallowed * absorbedC * (1 - growing)' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    change({ state: ownCover, rate: '-freesSurface * eaten * cover' }),
  ],
})
