import { needLeft, reaches, type System, tasteAtHeight, type Vessel } from '@holdfast/ecosystem'
import {
  chargedHazard,
  crewPools,
  type FactsOfSystem,
  finned,
  type Grazer,
  grazer,
  objections,
  stubbornKind,
  wantedKind,
} from '@holdfast/facts'
import { type Candidate, limitOf, roomOf } from './candidates.ts'
import type { Demand, Place } from './demand.ts'
import type { Weekly } from './hands.ts'
import { ProgrammeBuilder, type Row } from './programme.ts'
import type { Wishes } from './question.ts'

/** What the rounds of checking have taught since the first plan. */
export interface Learnt {
  /** Growth of places after the outbreak, g dry d⁻¹, by key. */
  readonly lean: ReadonlyMap<string, number>
  /** Share of it that the crew is taken to find. */
  readonly thrift: number
  /** How much more than growth a place needs, by key; 1 where nothing was learnt. */
  readonly more: ReadonlyMap<string, number>
  /** True where nobody comes any more of whom `fed` says nothing. */
  readonly closed: boolean
  /** Most of a taxon that was found to be fed. */
  readonly fed: ReadonlyMap<string, number>
  /** What the hand takes off each week beside what the plan leaves to it, for no crew that is fed holds it. */
  readonly hands: readonly Weekly[]
}

export interface ProgrammeQuestion {
  readonly system: System
  readonly home: Vessel
  readonly facts: FactsOfSystem
  readonly wishes: Wishes
  readonly candidates: readonly Candidate[]
  readonly demand: Demand
  readonly learnt: Learnt
}

/** Columns of one taxon: how many stay of those that are there, how many come. */
export interface Numbers {
  readonly animal: Grazer
  readonly there: number
  readonly stay: number
  readonly come: number
}

/** The programme with what its columns stand for. */
export interface CrewProgramme {
  readonly programme: ProgrammeBuilder
  readonly numbers: readonly Numbers[]
  readonly byHand: readonly { readonly place: Place; readonly column: number }[]
}

/** A place where less than this share of all growth grows is left out. */
const nothing = 0.003

/**
 * The cheapest crew that eats what grows with something to spare and finds food when less grows. Each animal has
 * one appetite that it spends over the places it reaches: of a kind it takes its taste times what it spends there,
 * which is what the simulation has it do, so that no row promises more than is ever eaten.
 */
export function crewProgramme(question: ProgrammeQuestion): CrewProgramme {
  const { system, home, facts, demand, learnt, wishes } = question
  const programme = new ProgrammeBuilder()
  const numbers = numbersOf(programme, question)
  const inHome = new Set(system.surfaces.filter(({ vessel }) => vessel === home.id).map(({ id }) => id))
  const unwanted = demand.places.filter(({ surface, kind }) => inHome.has(surface) && !wantedKind(kind))
  const grown = unwanted.reduce((sum, { growth_g_d }) => sum + growth_g_d, 0)
  const places = unwanted.filter(({ growth_g_d }) => growth_g_d > nothing * grown)
  const margin = 1 + (wishes.margin ?? facts.typical('crew_plan.margin'))
  const largest =
    facts.typical('crew_plan.largest') * margin * places.reduce((sum, { growth_g_d }) => sum + growth_g_d, 0)
  const covers = places.map((): (readonly [number, number])[] => [])
  const eatenLean = places.map((): (readonly [number, number])[] => [])
  for (const { animal, stay, come } of numbers) {
    const intake = demand.intakes.get(animal.taxon)
    if (!intake) continue
    const spent: (readonly [number, number])[] = []
    const found: (readonly [number, number])[] = []
    for (const [p, place] of places.entries()) {
      const taste = tasteFor(animal, place, question)
      if (taste === 0) continue
      const today = programme.column({})
      spent.push([today, 1])
      covers[p].push([today, taste])
      const later = programme.column({})
      found.push([later, 1])
      eatenLean[p].push([later, 1])
    }
    const appetite = intake.appetite_g_d
    // A crew that rests on one animal falls with it.
    if (swims(animal) && appetite > largest) programme.atMost(`largest share ${animal.taxon}`, [[come, 1]], 0)
    programme.atMost(`appetite ${animal.taxon}`, [...spent, [stay, -appetite], [come, -appetite]], 0)
    const need = needLeft(animal.taxon, system, facts) - intake.detritus_g_d
    if (need > 0) programme.atLeast(`hunger ${animal.taxon}`, [...found, [stay, -need], [come, -need]], 0)
  }
  const byHand = places.map((place, p) => {
    const worth =
      facts.typical('crew_plan.hand') *
      (stubbornKind(place.kind) ? facts.typical('crew_plan.hand_stubborn') : 1)
    const column = programme.column({ cost: worth })
    const wanted = margin * (learnt.more.get(place.key) ?? 1) * place.growth_g_d
    programme.atLeast(`cover ${place.key}`, [...covers[p], [column, 1]], wanted)
    programme.atMost(`lean ${place.key}`, eatenLean[p], learnt.thrift * (learnt.lean.get(place.key) ?? 0))
    return { place, column }
  })
  room(programme, numbers, question)
  company(programme, numbers, roomOf(home))
  wanted(programme, numbers, byHand, question)
  return { programme, numbers, byHand }
}

/** What the keeper alone asks for. */
function wanted(
  programme: ProgrammeBuilder,
  numbers: readonly Numbers[],
  byHand: CrewProgramme['byHand'],
  { wishes, facts }: ProgrammeQuestion,
): void {
  const { budget_usd, byHandMost_g_week, liked = [], keep = [] } = wishes
  if (budget_usd !== undefined) programme.atMost('budget', spending(numbers, facts), budget_usd)
  if (byHandMost_g_week !== undefined) programme.atMost('hand', handling(byHand), byHandMost_g_week)
  for (const name of liked) {
    const meant = numbers.filter(({ animal }) => goesBy(animal, name))
    programme.atLeast(
      `liked ${name}`,
      meant.flatMap(({ stay, come }) => [[stay, 1] as const, [come, 1] as const]),
      1,
    )
  }
  for (const { animal, there, stay } of numbers)
    if (there > 0 && (keep === 'all' || keep.some((name) => goesBy(animal, name))))
      programme.atLeast(`kept ${animal.taxon}`, [[stay, 1]], there)
}

/** Is an animal of that taxon or group. */
export const goesBy = ({ taxon, group }: Grazer, name: string): boolean => taxon === name || group === name

/** What those that come cost, US dollars. */
export const spending = (numbers: readonly Numbers[], facts: FactsOfSystem): Row['terms'] =>
  numbers.map(({ animal, come }) => [come, priceOf(animal, facts)] as const)

/** What is left to the hand, g dry a week. */
export const handling = (byHand: CrewProgramme['byHand']): Row['terms'] =>
  byHand.map(({ column }) => [column, 7] as const)

/** Taste of an animal for what grows at a place; 0 where it does not get there or only nibbles. */
function tasteFor({ taxon }: Grazer, place: Place, { system, facts }: ProgrammeQuestion): number {
  const surface = system.surfaces.find(({ id }) => id === place.surface)
  if (!surface || !reaches(surface, taxon, place.patch, undefined, facts)) return 0
  const taste = tasteAtHeight(taxon, place.kind, place.height_mm, facts)
  const least = facts.typical(stubbornKind(place.kind) ? 'crew_plan.remedy' : 'crew_plan.nibbles')
  return taste >= least ? taste : 0
}

/** Price of one that lives through its first month, US dollars. */
export function priceOf({ price_usd: { low, high } }: Grazer, { typical }: FactsOfSystem): number {
  return (low + high) / 2 / (1 - typical('crew.first_month_loss'))
}

/** What an animal that comes costs in a year, in US dollars: its price, those that replace it, and charges for what may go wrong. */
function costOf({ animal, tight, hunted }: Candidate, facts: FactsOfSystem): number {
  const price = priceOf(animal, facts)
  const lost = 1 - (1 - animal.annualMortality) * (1 - hunted)
  return (
    price * (1 + lost) +
    animal.hazards.filter(chargedHazard).length * facts.typical('crew_plan.hazard') +
    (tight ? facts.typical('crew_plan.tight') : 0)
  )
}

/** Giving one away is a deed like any other: it costs a little, so that nobody goes without a reason. */
const givingAway = 5

function numbersOf(
  programme: ProgrammeBuilder,
  { demand, facts, candidates, learnt }: ProgrammeQuestion,
): readonly Numbers[] {
  const known = new Map(candidates.map((one) => [one.animal.taxon, one]))
  return [...new Set([...demand.living.keys(), ...known.keys()])].flatMap((taxon) => {
    const animal = grazer(taxon)
    if (!animal) return []
    const there = demand.living.get(taxon) ?? 0
    const candidate = known.get(taxon)
    const most = Math.min(
      learnt.fed.get(taxon) ?? (learnt.closed ? 0 : Number.POSITIVE_INFINITY),
      Math.max(candidate?.most ?? 0, there),
    )
    const stay = programme.column({ upper: Math.min(there, most), whole: true, cost: -givingAway })
    const come = programme.column({
      upper: Math.max(0, candidate ? most - there : 0),
      whole: true,
      cost: candidate ? costOf(candidate, facts) : 0,
    })
    return [{ animal, there, stay, come }]
  })
}

/** Like animals share room by their appetites; swimmers share the water by their volumes. */
function room(
  programme: ProgrammeBuilder,
  numbers: readonly Numbers[],
  { system, home, facts }: ProgrammeQuestion,
): void {
  const eats = ({ animal }: Numbers): number => animal.consumption.typical
  for (const { title, groups, room: times } of crewPools()) {
    const members = numbers.filter(({ animal }) => groups.includes(animal.group))
    // What is there already has its room; one animal fits wherever it may live at all.
    const least = Math.max(0, ...members.filter(({ there }) => there === 0).map(eats))
    const shared = Math.max(
      least,
      facts.typical(times) *
        Math.max(0, ...members.map((one) => eats(one) * limitOf(one.animal, system, home))),
    )
    const held = members.reduce((sum, one) => sum + eats(one) * one.there, 0)
    programme.atMost(
      `room ${title}`,
      members.flatMap((one) => [[one.stay, eats(one)] as const, [one.come, eats(one)] as const]),
      Math.max(shared, held),
    )
  }
  const water = facts.typical('crew_plan.swimmers') * roomOf(home)
  const swimmers = numbers.filter(({ animal }) => swims(animal))
  const weight = ({ animal }: Numbers): number => Math.min(animal.volume_L.comfortable, water)
  const held = swimmers.reduce((sum, one) => sum + weight(one) * one.there, 0)
  programme.atMost(
    'room Swimmers',
    swimmers.flatMap((one) => [[one.stay, weight(one)] as const, [one.come, weight(one)] as const]),
    Math.max(water, held),
  )
}

/** Fish in no pool swim the whole water. */
const swims = ({ group }: Grazer): boolean =>
  finned(group) && !crewPools().some(({ groups }) => groups.includes(group))

/** Who may not live together in this volume: at most one of each such pair, and of some at most one animal. */
function company(programme: ProgrammeBuilder, numbers: readonly Numbers[], volume_L: number): void {
  const known = new Map<string, boolean>()
  const apart = (a: Numbers, b: Numbers): boolean => {
    const key = [a.animal.taxon, b.animal.taxon].sort().join(' and ')
    const told = known.get(key)
    if (told !== undefined) return told
    const said = objections({ animal: a.animal }, { animal: b.animal }).some(
      ({ rule, volume_L: from = 0 }) => rule === 'never' || (rule === 'only from volume' && volume_L < from),
    )
    known.set(key, said)
    return said
  }
  const present = new Map<Numbers, number>()
  const presence = (one: Numbers): number => {
    const there = present.get(one)
    if (there !== undefined) return there
    const { upper } = programme.columns[one.come]
    // Of whom one at most comes, its number says whether it is there.
    if (upper <= 1) return one.come
    const column = programme.column({ upper: 1, whole: true })
    programme.atMost(
      `present ${one.animal.taxon}`,
      [
        [one.come, 1],
        [column, -upper],
      ],
      0,
    )
    present.set(one, column)
    return column
  }
  const comers = numbers.filter(({ come }) => programme.columns[come].upper > 0)
  for (const one of comers)
    if (apart(one, one))
      programme.atMost(
        `company ${one.animal.taxon}`,
        [
          [one.come, 1],
          [one.stay, 1],
        ],
        Math.max(1, one.there),
      )
  for (const one of comers) {
    for (const there of numbers)
      if (there.there > 0 && there !== one && apart(one, there)) {
        const { upper } = programme.columns[one.come]
        programme.atMost(
          `company ${one.animal.taxon} and ${there.animal.taxon}`,
          [
            [one.come, 1 / upper],
            [there.stay, 1 / there.there],
          ],
          1,
        )
      }
  }
  for (const clique of cliques(comers, apart))
    programme.atMost(
      `company ${clique.map(({ animal }) => animal.taxon).join(', ')}`,
      clique.map((one) => [presence(one), 1] as const),
      1,
    )
}

/** Groups of animals of which no two may live together, so that every such pair is in one of them: tighter than pairs. */
function cliques(
  all: readonly Numbers[],
  apart: (a: Numbers, b: Numbers) => boolean,
): readonly (readonly Numbers[])[] {
  const found: Numbers[][] = []
  for (const [k, one] of all.entries())
    for (const other of all.slice(k + 1)) {
      if (!apart(one, other) || found.some((clique) => clique.includes(one) && clique.includes(other)))
        continue
      const clique = [one, other]
      for (const third of all)
        if (!clique.includes(third) && clique.every((each) => apart(third, each))) clique.push(third)
      found.push(clique)
    }
  return found
}
