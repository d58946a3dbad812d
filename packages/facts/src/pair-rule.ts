import list from './data/pair-rules.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import type { Grazer } from './grazer.ts'
import type { Neighbour } from './neighbour.ts'
import { finenessOf, meant, type Whom, whom } from './whom.ts'

/** What goes with what, and in which order. */
export interface PairRule {
  /** A `Whom`; or 'neighbour:coris_wrasses', 'role:sensitive coral', 'condition:open top'. */
  readonly a: string
  readonly b: string
  readonly rule: 'never' | 'only from volume' | 'caution' | 'order'
  /** Nominal inner volume of the vessel from which both may be kept. */
  readonly volume_L?: number
  /** Which of the two settles two to four weeks ahead. */
  readonly first?: 'a' | 'b'
  readonly why: string
  readonly source: string
  readonly provenance: Provenance
}

/** One side of a pair: an animal of the crew with its size, or a neighbour. */
export type Party = { readonly animal: Grazer; readonly size_cm?: number } | { readonly neighbour: Neighbour }

/** What the rules say of two parties, turned so that `first` is one of them. */
export interface PairObjection {
  readonly rule: PairRule['rule']
  readonly volume_L?: number
  readonly first?: 'one' | 'other'
  readonly why: string
  readonly by: PairRule
}

/** What a rule asks of the state of the system, in words that a page shows or a planner maps to a field. */
export interface Condition {
  readonly words: string
  readonly by: PairRule
}

const all = list as readonly PairRule[]

/** All rules, in the order of the table. */
export const pairRules = (): readonly PairRule[] => all

/** Rules of one matter: a finer one sets aside a coarser of the same, and none of another. */
const matterOf = ({ rule }: PairRule): string =>
  rule === 'never' || rule === 'only from volume' ? 'company' : rule

/**
 * What is said of two parties: of each matter (may they live together, caution, order) the rows that are told
 * most finely, a taxon before a genus before a group. Nothing said is no objection; both the same: two of it.
 */
export function objections(one: Party, other: Party): readonly PairObjection[] {
  const found = all.flatMap((by) => {
    const straight = fit(by.a, one) + fit(by.b, other)
    const turned = fit(by.b, one) + fit(by.a, other)
    if (!(straight > 0 || turned > 0)) return []
    return [{ by, fineness: Math.max(straight, turned), turned: turned > straight }]
  })
  const finest = new Map<string, number>()
  for (const { by, fineness } of found)
    finest.set(matterOf(by), Math.max(fineness, finest.get(matterOf(by)) ?? 0))
  return found
    .filter(({ by, fineness }) => fineness === finest.get(matterOf(by)))
    .map(({ by, turned }) => ({
      rule: by.rule,
      ...(by.volume_L === undefined ? {} : { volume_L: by.volume_L }),
      ...(by.first === undefined
        ? {}
        : { first: (by.first === 'a') === turned ? ('other' as const) : ('one' as const) }),
      why: by.why,
      by,
    }))
}

const never = Number.NEGATIVE_INFINITY

/** How finely a side of a rule tells a party; -∞ where it is about another. */
function fit(side: string, party: Party): number {
  const { word, name, who } = sideOf(side)
  if (word === 'condition') return never
  if ('neighbour' in party) {
    const { key, threats } = party.neighbour
    if (word === 'neighbour') return key === name ? 3 : never
    return word === 'role' && threats.some(({ role }) => role === name) ? 1 : never
  }
  if (word === 'neighbour' || word === 'role') return never
  return meant(who, party.animal, party.size_cm) > 0 ? finenessOf(who) + 1 : never
}

/** Sides as they were read: a planner asks thousands of pairs for the same hundred rules. */
const sides = new Map<string, { readonly word: string; readonly name?: string; readonly who: Whom }>()

function sideOf(side: string) {
  const read = sides.get(side)
  if (read) return read
  const [word, name] = side.split(':', 2)
  const made = { word, name, who: whom(side) }
  sides.set(side, made)
  return made
}

const conditionWord = 'condition:'

/** States of the system that rules name for an animal: some bar it, some ask for care, some come first. */
export function conditionsOf(animal: Grazer): readonly Condition[] {
  return all.flatMap((by) => {
    const sides = [by.a, by.b]
    const condition = sides.find((side) => side.startsWith(conditionWord))
    const who = sides.find((side) => !side.startsWith(conditionWord))
    if (condition === undefined || who === undefined || fit(who, { animal }) < 0) return []
    return [{ words: condition.slice(conditionWord.length), by }]
  })
}
