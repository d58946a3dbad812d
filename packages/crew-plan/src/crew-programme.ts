import { needLeft, reaches, type System, tasteAtHeight, type Vessel } from '@holdfast/ecosystem'
import { chargedHazard, type FactsOfSystem, type Grazer, stubbornKind, wantedKind } from '@holdfast/facts'
import { type Candidate, roomOf } from './candidates.ts'
import { company, room, swims } from './company.ts'
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
  /** Of those that are there and ran short, how many were found to find enough; the rest is fed, given away or lent. */
  readonly enoughFor: ReadonlyMap<string, number>
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
  /** True: as it is written down, without what only makes it quicker to solve. The best crew is the same. */
  readonly loose?: boolean
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
  /** Added to what the columns cost: what giving all away would cost, which each that stays takes off. */
  readonly offset: number
  readonly numbers: readonly Numbers[]
  /** Places that the same mouths eat alike have one column, of which each has its share. */
  readonly byHand: readonly { readonly place: Place; readonly column: number; readonly share: number }[]
}

/** A taxon that eats: what it takes today, and what it needs when less grows. */
interface Mouth extends Numbers {
  readonly appetite_g_d: number
  readonly need_g_d: number
}

/** A place where less than this share of all growth grows is left out. */
const nothing = 0.003
/** Of rounding, where a number is counted down to whole animals. */
const slack = 1e-9

/**
 * The cheapest crew that eats what grows with something to spare and finds food when less grows. Each animal has
 * one appetite that it spends over the places it reaches: of a kind it takes its taste times what it spends there,
 * which is what the simulation has it do, so that no row promises more than is ever eaten.
 */
export function crewProgramme(question: ProgrammeQuestion): CrewProgramme {
  const { system, home, facts, demand, learnt, wishes, loose = false } = question
  const programme = new ProgrammeBuilder()
  const numbers = numbersOf(programme, question)
  const inHome = new Set(system.surfaces.filter(({ vessel }) => vessel === home.id).map(({ id }) => id))
  const unwanted = demand.places.filter(({ surface, kind }) => inHome.has(surface) && !wantedKind(kind))
  const grown = sum(unwanted.map(({ growth_g_d }) => growth_g_d))
  const places = unwanted.filter(({ growth_g_d }) => growth_g_d > nothing * grown)
  const margin = 1 + (wishes.margin ?? facts.typical('crew_plan.margin'))
  const largest =
    facts.typical('crew_plan.largest') * margin * sum(places.map(({ growth_g_d }) => growth_g_d))
  const mouths = numbers.flatMap((one): Mouth[] => {
    const { animal, stay, come } = one
    const intake = demand.intakes.get(animal.taxon)
    if (!intake || programme.columns[stay].upper + programme.columns[come].upper === 0) return []
    // A crew that rests on one animal falls with it.
    if (swims(animal) && intake.appetite_g_d > largest)
      programme.atMost(`largest share ${animal.taxon}`, [[come, 1]], 0)
    const need_g_d = needLeft(animal.taxon, system, facts) - intake.detritus_g_d
    return [{ ...one, appetite_g_d: intake.appetite_g_d, need_g_d }]
  })
  const wanted_g_d = places.map(({ key, growth_g_d }) => margin * (learnt.more.get(key) ?? 1) * growth_g_d)
  const lean_g_d = places.map(({ key }) => learnt.thrift * (learnt.lean.get(key) ?? 0))
  const tastes = new Map(
    mouths.map((mouth) => [mouth, places.map((place) => tasteFor(mouth.animal, place, question))] as const),
  )
  const tastesOf = (mouth: Mouth): readonly number[] => tastes.get(mouth) ?? []
  for (const mouth of loose ? [] : mouths) limitBy(programme, mouth, tastesOf(mouth), wanted_g_d, lean_g_d)
  // Mouths that eat the same from the same places spend one appetite together.
  const diets = alike(mouths, (mouth) => (loose ? [mouth.animal.taxon] : tastesOf(mouth))).map((members) => ({
    members,
    tastes: tastesOf(members[0]),
    spent: [] as [number, number][],
  }))
  const byHand = alike([...places.keys()], (p) => [
    stubbornKind(places[p].kind),
    ...diets.map((diet) => diet.tastes[p]),
  ]).flatMap((same) => {
    const [first] = same
    const together = sum(same.map((p) => wanted_g_d[p]))
    const { key, kind } = places[first]
    const worth =
      facts.typical('crew_plan.hand') * (stubbornKind(kind) ? facts.typical('crew_plan.hand_stubborn') : 1)
    const column = programme.column({ cost: worth })
    const spent = diets.flatMap((diet) => {
      const taste = diet.tastes[first]
      if (taste === 0) return []
      const today = programme.column({})
      diet.spent.push([today, 1])
      // An animal takes no more from a place than grows there: said of each one, a part of an animal buys little.
      if (!loose && diet.members.some((mouth) => mouth.appetite_g_d * taste > together))
        programme.atMost(
          `spent ${key}`,
          [
            [today, 1],
            ...diet.members.flatMap((mouth) => times(mouth, Math.min(mouth.appetite_g_d, together / taste))),
          ],
          0,
        )
      return [[today, taste] as const]
    })
    programme.atLeast(`cover ${key}`, [...spent, [column, 1]], together)
    return same.map((p) => ({ place: places[p], column, share: wanted_g_d[p] / together }))
  })
  for (const { members, spent } of diets)
    programme.atMost(
      `appetite ${namesOf(members)}`,
      [...spent, ...members.flatMap((mouth) => times(mouth, mouth.appetite_g_d))],
      0,
    )
  const ranges = alike(
    mouths.filter(({ need_g_d }) => need_g_d > 0),
    (mouth) => (loose ? [mouth.animal.taxon] : tastesOf(mouth).map((taste) => taste > 0)),
  ).map((members) => ({ members, gets: tastesOf(members[0]), found: [] as [number, number][] }))
  for (const same of alike([...places.keys()], (p) => ranges.map(({ gets }) => gets[p] > 0))) {
    const [first] = same
    const found = ranges
      .filter(({ gets }) => gets[first] > 0)
      .map((range) => {
        const later = programme.column({})
        range.found.push([later, 1])
        return [later, 1] as const
      })
    programme.atMost(`lean ${places[first].key}`, found, sum(same.map((p) => lean_g_d[p])))
  }
  for (const { members, found } of ranges)
    programme.atLeast(
      `hunger ${namesOf(members)}`,
      [
        ...found,
        ...members.flatMap((mouth) => [
          ...fedByHand(programme, mouth, learnt),
          ...times(mouth, mouth.need_g_d),
        ]),
      ],
      0,
    )
  room(programme, numbers, question)
  company(programme, numbers, roomOf(home))
  wanted(programme, numbers, byHand, question)
  const offset = givingAway * sum(numbers.map(({ there }) => there))
  return { programme, offset, numbers, byHand }
}

/** So much of each that stays or comes, on the other side of a row. */
const times = ({ stay, come }: Mouth, each: number): Row['terms'] => [
  [stay, -each],
  [come, -each],
]

const namesOf = (mouths: readonly Mouth[]): string => mouths.map(({ animal }) => animal.taxon).join(', ')

/** More than find food when less grows cannot come; more than eat all that is wanted do not come, whatever they cost. */
function limitBy(
  programme: ProgrammeBuilder,
  { come, appetite_g_d, need_g_d }: Mouth,
  tastes: readonly number[],
  wanted_g_d: readonly number[],
  lean_g_d: readonly number[],
): void {
  const found = sum(tastes.map((taste, p) => (taste > 0 ? lean_g_d[p] : 0)))
  const useful = sum(tastes.map((taste, p) => (taste > 0 ? wanted_g_d[p] / taste : 0)))
  if (need_g_d > 0) programme.limit(come, Math.floor(found / need_g_d + slack))
  if (appetite_g_d > 0) programme.limit(come, Math.max(1, Math.ceil(useful / appetite_g_d)))
}

/** What the hand feeds of those that are there: a column where they need food at all. */
function fedByHand(
  programme: ProgrammeBuilder,
  { animal, there, stay, need_g_d }: Mouth,
  learnt: Learnt,
): Row['terms'] {
  if (there === 0) return []
  const enoughFor = learnt.enoughFor.get(animal.taxon)
  // Nobody goes on a guess: only a trial shows who runs short.
  const cost = enoughFor === undefined ? Math.min(feeding, (guessed * givingAway) / need_g_d) : feeding
  const fed = programme.column({ cost })
  const terms: Row['terms'] = [
    [fed, 1],
    [stay, -need_g_d],
  ]
  programme.atMost(`fed ${animal.taxon}`, terms, 0)
  if (enoughFor !== undefined) programme.atLeast(`short ${animal.taxon}`, terms, -need_g_d * enoughFor)
  return [[fed, 1]]
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
  [...new Set(byHand.map(({ column }) => column))].map((column) => [column, 7] as const)

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0)

/** Items in groups, of which each has the same marks: to the programme they are one. */
function alike<Item>(
  items: readonly Item[],
  marks: (item: Item) => readonly unknown[],
): readonly (readonly [Item, ...Item[]])[] {
  const groups = new Map<string, [Item, ...Item[]]>()
  for (const item of items) {
    const key = marks(item).join('; ')
    const group = groups.get(key)
    if (group) group.push(item)
    else groups.set(key, [item])
  }
  return [...groups.values()]
}

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

/**
 * Feeding those that are there for a year, US dollars for each gram of dried algae a day: what such a sheet costs in
 * shops, as recalled; one clip serves all.
 */
const feeding = 100

/** Before a trial has shown who runs short, feeding one is this share of what giving it away is. */
const guessed = 0.9

/** Giving one away is a deed like any other: it costs a little, so that nobody goes without a reason. */
const givingAway = 5

function numbersOf(
  programme: ProgrammeBuilder,
  { demand, facts, candidates, learnt }: ProgrammeQuestion,
): readonly Numbers[] {
  const known = new Map(candidates.map((one) => [one.animal.taxon, one]))
  return [...new Set([...demand.living.keys(), ...known.keys()])].flatMap((taxon) => {
    const animal = facts.grazer(taxon)
    if (!animal) return []
    const there = demand.living.get(taxon) ?? 0
    const candidate = known.get(taxon)
    const most = Math.min(
      learnt.fed.get(taxon) ?? (learnt.closed ? 0 : Number.POSITIVE_INFINITY),
      Math.max(candidate?.most ?? 0, there),
    )
    const stay = programme.column({ upper: there, whole: true, cost: -givingAway })
    const come = programme.column({
      upper: Math.max(0, candidate ? most - there : 0),
      whole: true,
      cost: candidate ? costOf(candidate, facts) : 0,
    })
    return [{ animal, there, stay, come }]
  })
}
