import { rowsOf, type System, type Vessel } from '@holdfast/ecosystem'
import {
  conditionsOf,
  crewConditions,
  crewPools,
  exposed,
  type FactsOfSystem,
  finned,
  type Grazer,
  holds,
  type Neighbour,
  neighboursNamed,
  objections,
} from '@holdfast/facts'
import type { Wishes } from './question.ts'

/** An animal that may be bought, and what is to be known before it is. */
export interface Candidate {
  readonly animal: Grazer
  /** Most that the vessel has room for. */
  readonly most: number
  /** Between its least and its comfortable volume. */
  readonly tight: boolean
  /** Share of them lost within a year to tank mates. */
  readonly hunted: number
  readonly cautions: readonly string[]
}

/** An animal that is not to come, and why. */
export interface Barred {
  readonly taxon: string
  readonly code:
    | 'not safe in a reef'
    | 'caution not accepted'
    | 'refused'
    | 'rarely sold'
    | 'not bought'
    | 'no room'
    | 'temperature'
    | 'condition'
    | 'tank mate'
    | 'too many already'
  readonly why: string
}

export interface Judged {
  readonly candidates: readonly Candidate[]
  readonly barred: readonly Barred[]
}

/** The vessel that is meant, else the one with most surface: animals live where algae grow. */
export function homeOf(system: System, wished?: string): Vessel {
  const told = system.vessels.find(({ id }) => id === wished)
  if (told) return told
  const areaIn = ({ id }: Vessel): number =>
    system.surfaces.filter(({ vessel }) => vessel === id).reduce((sum, { area_m2 }) => sum + area_m2, 0)
  return system.vessels.reduce((best, one) => (areaIn(one) > areaIn(best) ? one : best))
}

/** Nominal inner volume, L; the water where the glass is not told. */
export const roomOf = ({ glass_volume_L, volume_L }: Vessel): number => glass_volume_L ?? volume_L

/** Judges every animal that is known of for a vessel: room, warmth, tank mates, hazards and wishes. */
export function judged(system: System, home: Vessel, wishes: Wishes, facts: FactsOfSystem): Judged {
  const candidates: Candidate[] = []
  const barred: Barred[] = []
  const mates = matesOf(system, home, facts)
  for (const animal of facts.grazers()) {
    const no = refusal(animal, system, home, wishes, mates, facts)
    if (no) barred.push({ taxon: animal.taxon, ...no })
    else
      candidates.push({
        animal,
        most: Math.min(mostOf(animal, system, home, facts), wishes.mostOfOne ?? Number.POSITIVE_INFINITY),
        tight: roomOf(home) < animal.volume_L.comfortable,
        hunted: chanceOfLoss(animal, mates, home),
        cautions: cautionsOf(animal, system, home, mates),
      })
  }
  return { candidates, barred }
}

/** Neighbours that live in a vessel: other animals, and corals; an animal of which no vessel is told may be anywhere. */
function matesOf(system: System, home: Vessel, facts: FactsOfSystem): readonly Neighbour[] {
  const corals = system.corals ? neighboursNamed(system.corals.kind) : []
  const near = system.animals.filter(({ vessel = home.id }) => vessel === home.id)
  return [...new Set([...near.flatMap((one) => rowsOf(one, facts)), ...corals])]
}

type Refusal = Omit<Barred, 'taxon'>

function refusal(
  animal: Grazer,
  system: System,
  home: Vessel,
  wishes: Wishes,
  mates: readonly Neighbour[],
  facts: FactsOfSystem,
): Refusal | undefined {
  const named = (list: readonly string[]): boolean =>
    list.includes(animal.taxon) || list.includes(animal.group)
  const { withCaution = [], never = [], only, liked = [] } = wishes
  const accepted = withCaution === 'all' || withCaution.includes(animal.taxon)
  if (animal.reefSafe === 'no') return { code: 'not safe in a reef', why: animal.reefSafeReason }
  if (named(never) || (only && !named(only))) return { code: 'refused', why: 'You do not want it.' }
  if (animal.offered === 'comes by itself')
    return { code: 'not bought', why: 'It comes by itself with rock and frags.' }
  if (animal.offered === 'as a culture')
    return { code: 'not bought', why: 'It is seeded as a culture and not counted.' }
  const asked = only !== undefined || named(liked)
  if (animal.offered === 'for a while' && !asked)
    return {
      code: 'not bought',
      why: 'It is had for an outbreak and given back; name it to have it considered.',
    }
  if (animal.offered === 'rarely' && !asked)
    return { code: 'rarely sold', why: 'It is rarely sold; name it to have it considered.' }
  if (animal.reefSafe === 'with caution' && !accepted)
    return { code: 'caution not accepted', why: animal.reefSafeReason }
  const room = roomOf(home)
  if (room < animal.volume_L.least)
    return { code: 'no room', why: `It needs at least ${animal.volume_L.least} L; ${home.id} has ${room} L.` }
  const { leastLength_cm = 0 } = animal
  if (home.length_cm !== undefined && home.length_cm < leastLength_cm)
    return {
      code: 'no room',
      why: `It needs a vessel of at least ${leastLength_cm} cm; ${home.id} has ${home.length_cm} cm.`,
    }
  if (mostOf(animal, system, home, facts) < 1)
    return {
      code: 'no room',
      why:
        animal.stocking.perSand_m2 === undefined
          ? 'Keepers advise against it in any number.'
          : `It lives on sand, of which ${home.id} has too little for one.`,
    }
  const { min, max } = animal.temperature_C
  if (system.temperature_C < min || system.temperature_C > max)
    return {
      code: 'temperature',
      why: `It lives at ${min} to ${max} °C; the water has ${system.temperature_C} °C.`,
    }
  const bar = conditionsOf(animal).find(
    ({ words, by }) => by.rule === 'never' && conditionHolds(words, animal, system, home) === true,
  )
  if (bar) return { code: 'condition', why: `${bar.words}: ${bar.by.why}` }
  const mate = mates.find((neighbour) =>
    objections({ animal }, { neighbour }).some(({ rule }) => rule === 'never'),
  )
  if (mate) return { code: 'tank mate', why: `It does not go with ${mate.title}.` }
  if (chanceOfLoss(animal, mates, home) >= facts.typical('crew_plan.too_dangerous'))
    return { code: 'tank mate', why: `${worstOf(animal, mates, home)?.title} would take it within the year.` }
  return undefined
}

/** Chance that a mate takes or harries an animal of the crew within a year. */
const danger = (animal: Grazer, { threats }: Neighbour, home: Vessel): number =>
  Math.max(
    0,
    ...threats
      .filter(({ role }) => role === 'predator of crew' || role === 'aggressor')
      .filter((threat) => holds(threat, { volume_L: roomOf(home) }))
      .map((threat) => threat.severity * exposed(threat, animal)),
  )

const chanceOfLoss = (animal: Grazer, mates: readonly Neighbour[], home: Vessel): number =>
  1 - mates.reduce((left, mate) => left * (1 - danger(animal, mate, home)), 1)

const worstOf = (animal: Grazer, mates: readonly Neighbour[], home: Vessel): Neighbour | undefined =>
  [...mates].sort((a, b) => danger(animal, b, home) - danger(animal, a, home))[0]

/** Does a state of the system that a rule names hold; undefined where only the keeper knows, or another rule judges it. */
function conditionHolds(words: string, animal: Grazer, system: System, home: Vessel): boolean | undefined {
  const one = crewConditions().find((condition) => condition.words === words)
  if (!one) return undefined
  const { temperature_C, surfaces, sand, feeds } = system
  const age = Math.max(0, ...surfaces.map(({ age_days }) => age_days))
  if (one.judgedBy !== undefined) return false
  if (one.hotterThan_C !== undefined) return temperature_C > one.hotterThan_C
  if (one.colderThan_C !== undefined) return temperature_C < one.colderThan_C
  if (one.youngerThan_days !== undefined) return age < one.youngerThan_days
  if (one.sandYoungerThan_days !== undefined) return age < one.sandYoungerThan_days
  if (one.without === 'sand') return !sand && !surfaces.some(({ kind }) => kind === 'sand')
  if (one.without === 'seaweed fed') return !feeds.some(({ kind }) => /seaweed|nori/i.test(kind))
  // Of its length the animal itself was asked.
  if (one.shorterThan_cm !== undefined && animal.leastLength_cm !== undefined) return false
  if (one.shorterThan_cm === undefined || home.length_cm === undefined) return undefined
  const { except } = one
  const spared = except && animal.mouth === except.mouth && animal.adultSize_cm <= except.adultSizeUpTo_cm
  return home.length_cm < (spared ? except.shorterThan_cm : one.shorterThan_cm)
}

/** What must be shown before such an animal is bought. */
function cautionsOf(
  animal: Grazer,
  system: System,
  home: Vessel,
  mates: readonly Neighbour[],
): readonly string[] {
  const room = roomOf(home)
  const { comfortable } = animal.volume_L
  const ofState = conditionsOf(animal)
    .filter(({ words, by }) => by.rule !== 'order' && conditionHolds(words, animal, system, home) !== false)
    .map(({ words, by }) => `${by.rule === 'never' ? 'Not with' : 'Mind'} ${words}: ${by.why}.`)
  const ofMates = mates.flatMap((neighbour) =>
    objections({ animal }, { neighbour })
      .filter(({ rule }) => rule === 'caution')
      .map(({ why }) => `Beside ${neighbour.title}: ${why}.`),
  )
  return [
    ...(animal.reefSafe === 'with caution' ? [`${animal.reefSafeReason}.`] : []),
    ...(room < comfortable ? [`${room} L is under the ${comfortable} L in which it is comfortable.`] : []),
    ...ofMates,
    ...ofState,
  ]
}

/** Most of a taxon where nothing else shares the room: as the table of stocking says, times the room of its pool. */
export function mostOf(animal: Grazer, system: System, home: Vessel, facts: FactsOfSystem): number {
  const pool = crewPools().find(({ groups }) => groups.includes(animal.group))
  const alone = limitOf(animal, system, home)
  // One animal may live wherever its least volume is met.
  const one = animal.stocking.words !== 'not advised' && animal.stocking.perSand_m2 === undefined ? 1 : 0
  const most = finned(animal.group) ? alone : alone * (pool ? facts.typical(pool.room) : 1)
  return Math.max(Math.floor(most + 1e-9), one)
}

/** How many of a taxon are kept in this vessel where it is the only one of its kind of mouth, at the dense end. */
export function limitOf({ stocking }: Grazer, { surfaces }: System, home: Vessel): number {
  const { per100L, perSand_m2, perTank = 0 } = stocking
  if (per100L) return (per100L.high * roomOf(home)) / 100
  if (!perSand_m2) return perTank
  const sand = surfaces
    .filter(({ kind, vessel }) => kind === 'sand' && vessel === home.id)
    .reduce((sum, { area_m2 }) => sum + area_m2, 0)
  return perSand_m2.high * sand
}
