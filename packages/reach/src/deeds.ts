import { homeOf, judged, type Present } from '@holdfast/crew-plan'
import { livesAt, reaches, type Surface, tasteAtHeight } from '@holdfast/ecosystem'
import { caution, controlsOf, type Grazer, measure, stubbornKind, surfaceKind } from '@holdfast/facts'
import type { Deed, GrazerReach, PlaceReach } from './answer.ts'
import { daysUntilMinded, longest, rhythmInWords, rhythmOf } from './rhythm.ts'

/** A crew that uses less than this share of its appetite has some to spare. */
const spare = 0.5
/** So many animals are named at most. */
const named = 3
/** Kinds of surface that can be moved or turned, and those that need no light to be of use. */
const movable: ReadonlySet<Surface['kind']> = new Set([
  'rock_face',
  'rock_underside',
  'frag_rack',
  'equipment',
])
const fineDark: ReadonlySet<Surface['kind']> = new Set(['plumbing_overflow', 'equipment'])

/** What to do about a patch, the gentlest first: animals, moving the thing, a blind against light, the hand. */
export function deedsFor(
  place: PlaceReach,
  surface: Surface,
  crew: readonly GrazerReach[],
  present: Present,
): readonly Deed[] {
  if (daysUntilMinded(place, present.model.facts) > longest)
    return [
      deed(
        'wait',
        `Nothing yet: in ${longest} days less grows here than most keepers mind. Look again then.`,
      ),
    ]
  return [
    animals(place, surface, crew, present),
    moved(place, surface, crew, present),
    shaded(surface),
    byHand(place, surface, present),
  ].filter((deed) => deed !== undefined)
}

const deed = (key: string, says: string, cautions = measure(key).cautions): Deed => ({
  measure: key,
  says,
  cautions: cautions.map(caution),
})

function animals(
  place: PlaceReach,
  surface: Surface,
  crew: readonly GrazerReach[],
  present: Present,
): Deed | undefined {
  const { system, facts } = present.model
  const gets = (animal: Grazer): boolean =>
    eats(animal, place, present) && reaches(surface, animal.taxon, place.patch, undefined, facts)
  const there = crew
    .flatMap(({ taxon }) => facts.grazer(taxon) ?? [])
    .filter((animal) => gets(animal) && livesAt(system, animal.taxon, surface))
  const isSpare = crew.some(
    ({ taxon, used }) => used.value < spare && there.some((one) => one.taxon === taxon),
  )
  if (isSpare)
    return deed(
      'place_grazer_inside',
      `These get there, eat it and have appetite to spare: ${namesOf(there)}. ${measure('place_grazer_inside').how}`,
    )
  const may = judged(system, homeOf(system, surface.vessel), {}, facts)
    .candidates.map(({ animal }) => animal)
    .filter((animal) => gets(animal) && !there.includes(animal))
    .sort((a, b) => tasteOf(b, place, present) - tasteOf(a, place, present))
    .slice(0, named)
  if (may.length === 0 && there.length === 0) return undefined
  const says = [
    ...(there.length > 0 ? [`Of those you have, these get there and eat it: ${namesOf(there)}.`] : []),
    ...(may.length > 0 ? [`These would do so too and may live here: ${namesOf(may)}.`] : []),
    'The crew plan says who, how many and in which order.',
  ]
  return deed(surface.enclosed ? 'place_grazer_inside' : 'crew_add', says.join(' '))
}

/** Moves the thing to those of the crew that eat the kind and do not get to it. */
function moved(
  place: PlaceReach,
  { kind, enclosed }: Surface,
  crew: readonly GrazerReach[],
  present: Present,
): Deed | undefined {
  if (place.met !== 'not reached' || enclosed || !movable.has(kind)) return undefined
  const names = crew
    .filter(({ taxon }) => {
      const animal = present.model.facts.grazer(taxon)
      return animal !== undefined && eats(animal, place, present)
    })
    .map(({ tradeName }) => tradeName)
  if (names.length === 0) return undefined
  return deed('rock_moved_to_grazers', `Turn or move it so that these get to it: ${names.join(', ')}.`)
}

const shaded = ({ kind, light_umol_m2_s }: Surface): Deed | undefined =>
  fineDark.has(kind) && light_umol_m2_s > 0 ? deed('shade_surface', measure('shade_surface').how) : undefined

function byHand(place: PlaceReach, surface: Surface, { model }: Present): Deed | undefined {
  if (!surfaceKind(surface.kind).handReaches.includes(place.patch))
    return deed(
      'rock_moved_to_grazers',
      'A hand gets there only where the piece is lifted out: leave it, unless it spreads from there.',
    )
  const rhythm = rhythmInWords(rhythmOf(place, model.facts))
  const rung = controlsOf(place.kind).find(({ measure: key }) => key.startsWith('hand_removal'))
  const { how, cautions } = rung ?? measure('hand_removal')
  return deed(rung?.measure ?? 'hand_removal', `By hand ${rhythm}. ${how}`, cautions)
}

const namesOf = (list: readonly Grazer[]): string => list.map(({ tradeName }) => tradeName).join(', ')

const tasteOf = ({ taxon }: Grazer, { kind, height_mm }: PlaceReach, { model }: Present): number =>
  tasteAtHeight(taxon, kind, height_mm, model.facts)

/** More than nibbling at it; of a stubborn kind as a remedy. */
const eats = (animal: Grazer, place: PlaceReach, present: Present): boolean =>
  tasteOf(animal, place, present) >=
  present.model.facts.typical(stubbornKind(place.kind) ? 'crew_plan.remedy' : 'crew_plan.nibbles')
