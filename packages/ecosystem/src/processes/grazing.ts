import { consumptionId, type Grazer, grazer, mouth, taste } from '@holdfast/facts'
import { outside, patches, standAccount, standCover, water } from '../accounts/index.ts'
import { amount, change, fact, gathered, process, setting, split } from '../declare/index.ts'
import type { Animals, Surface, System } from '../system.ts'
import { temperature } from './readings.ts'
import { type Growing, ofKind, patchShare, standFacts, standing, standsOf, standTerms } from './stands.ts'

/** One taxon of the crew at one stand that it reaches and eats. */
export interface Mouth extends Growing {
  readonly animals: Animals
  readonly taxon: string
  readonly animal: Grazer
}

/** Setting that holds how many of a taxon there are. */
export const countSetting = (taxon: string): string => `count ${taxon}`

type Bite = 'halfSaturation' | 'fullHeight' | 'floorHeight' | 'floorShare'

/** Fact of the animal's way of biting. */
const bite =
  (what: Bite) =>
  ({ animal }: Mouth): string =>
    mouth(animal.mouth)[what]

/** Does the animal get into a surface behind a comb: half of its size passes the slot. */
export function passes(surface: Surface, adultSize_cm: number): boolean {
  if (!surface.enclosed) return true
  return surface.opening_mm !== undefined && (adultSize_cm * 10) / 2 <= surface.opening_mm
}

/**
 * Patches in the order open, half hidden, hidden: one is reached when the share of the surface that
 * the animal gets to is at least the share up to the middle of that patch.
 */
export function reaches(
  surface: Surface,
  taxon: string,
  patch: (typeof patches)[number],
  size_cm?: number,
): boolean {
  const animal = grazer(taxon)
  if (!animal || !passes(surface, size_cm ?? animal.adultSize_cm)) return false
  let upTo = 0
  for (const each of patches) {
    const share = patchShare(surface, each)
    if (each === patch) return animal.reach[surface.kind] >= upTo + share / 2
    upTo += share
  }
  return false
}

export function mouthsOf(system: System): readonly { readonly name: string; readonly of: Mouth }[] {
  return system.animals.flatMap((animals) => {
    const { taxon } = animals
    const animal = taxon === undefined ? undefined : grazer(taxon)
    if (taxon === undefined || !animal) return []
    return standsOf(system)
      .filter(
        ({ surface, stand }) =>
          reaches(surface, taxon, stand.patch, animals.adult_size_cm) &&
          taste(taxon, stand.kind).preference > 0,
      )
      .map((growing) => ({
        name: `${taxon} at ${growing.stand.kind} on ${growing.surface.id}, ${growing.stand.patch}`,
        of: { ...growing, animals, taxon, animal },
      }))
  })
}

const reachableArea = ({ system, taxon, animals }: Mouth): number =>
  system.surfaces.reduce(
    (sum, surface) =>
      sum +
      patches
        .filter((patch) => reaches(surface, taxon, patch, animals.adult_size_cm))
        .reduce((part, patch) => part + surface.area_m2 * patchShare(surface, patch), 0),
    0,
  )

export const grazing = process<Mouth>({
  id: 'grazing',
  title: 'Grazing',
  says: 'Each animal shares its appetite over the stands it reaches, by taste and by how much stands above the stubble; nearly all that is eaten comes back to the water.',
  source: 'holdfast-estimate',
  each: mouthsOf,
  reads: {
    ...standing,
    nitrogen: amount(({ stand }) => standAccount(stand), 'N'),
    phosphorus: amount(({ stand }) => standAccount(stand), 'P'),
    temperature,
    food: gathered('food', ({ taxon }) => taxon, 'g'),
    count: setting(
      ({ taxon }) => countSetting(taxon),
      '1',
      ({ animals }) => animals.count,
    ),
    taste: setting(
      ({ taxon, stand }) => `taste ${taxon} ${stand.kind}`,
      '1',
      ({ taxon, stand }) => taste(taxon, stand.kind).preference,
    ),
    reachable: setting(({ taxon }) => `reachable ${taxon}`, 'm²', reachableArea),
    absorbedC: setting(
      ({ taxon }) => `absorbed C ${taxon}`,
      '1',
      ({ animal }) => animal.assimilationOrganic,
    ),
    absorbedN: setting(
      ({ taxon }) => `absorbed N ${taxon}`,
      '1',
      ({ animal }) => animal.assimilationNitrogen,
    ),
  },
  parameters: {
    ...standFacts,
    appetite: fact(({ taxon }) => consumptionId(taxon), 'g d⁻¹'),
    appetiteLeft: fact(({ animal }) => `grazing.appetite_left.${animal.appetite}`, '1'),
    half: fact(bite('halfSaturation'), 'g m⁻²'),
    warming: fact('grazing.q10', '1'),
    stubble: fact(ofKind('stubble'), 'g m⁻²'),
    canopy: fact(ofKind('canopy_height'), 'mm'),
    biteFull: fact(bite('fullHeight'), 'mm'),
    biteLimit: fact(bite('floorHeight'), 'mm'),
    biteLeast: fact(bite('floorShare'), '1'),
    freesSurface: fact('grazing.frees_surface', '1'),
  },
  gathers: { food: { key: ({ taxon }) => taxon, sum: 'taste * edible', unit: 'g' } },
  terms: {
    ...standTerms,
    edible: {
      is: 'positive(mass - stubble * covered) * fallingLine(canopy * thickness, biteFull, biteLimit, biteLeast)',
      unit: 'g',
    },
    density: { is: 'food / reachable', unit: 'g m⁻²' },
    intake: {
      is: 'count * appetite * appetiteLeft * q10(warming, temperature) * monod(density, half)',
      unit: 'g d⁻¹',
    },
    // Share of the stand eaten in a day; taste stands twice: it caps the rate and divides the appetite.
    eaten: { is: 'part(intake * taste * part(taste * edible, food), mass)', unit: 'd⁻¹' },
  },
  transfers: [
    split({
      atom: 'N',
      from: ({ stand }) => standAccount(stand),
      rate: 'eaten * nitrogen',
      into: [
        { to: water.ammonia, share: 'absorbedN' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: ({ stand }) => standAccount(stand),
      rate: 'eaten * phosphorus',
      into: [
        { to: water.phosphate, share: 'absorbedN' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: ({ stand }) => standAccount(stand),
      rate: 'eaten * carbon',
      into: [
        { to: outside.inorganicCarbon, share: 'absorbedC' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    change({ state: ({ stand }) => standCover(stand), rate: '-freesSurface * eaten * cover' }),
  ],
})
