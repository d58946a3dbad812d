import type { LookAlike, Response, Trait } from '@holdfast/facts'
import { costOf } from './cost.ts'
import type { Answers, Chance, Key } from './key.ts'

/** A mistake that costs so many months, or more, harms a person or animals. */
const harms = 2

/** A look-alike less likely than this is not looked for. */
const leastLikely = 0.005

/** A look that is owed before one acts as on the likeliest kind. */
export interface HarmOpen {
  /** The look-alike that would harm. */
  readonly suspect: Chance
  /** What to look at; undefined where the keeper cannot look, or has looked at everything. */
  readonly look?: Trait
  /** True where something that was noted speaks for the suspect. */
  readonly spoken: boolean
}

/**
 * Look-alikes of the likeliest kind that harm whoever takes them for it, and were not looked for. They are asked
 * for though they are unlikely, since the table counts traits as apart that hang together within a kind:
 * dinoflagellates of the sand have neither strings nor height, and are like diatoms in all of that.
 * One is settled once a trait that parts the two speaks for the likeliest kind.
 */
export function harmsOpen(
  key: Key,
  answers: Answers,
  chances: readonly Chance[],
  passedOver: readonly string[],
  response: Response,
): readonly HarmOpen[] {
  const first = chances[0]?.key
  const others = chances.slice(1).filter(({ chance }) => chance >= leastLikely)
  return others.flatMap((suspect) => {
    const meant = key.responses.find(({ kinds }) => kinds.includes(suspect.key))
    if (first === undefined || meant === undefined || costOf(response, meant) < harms) return []
    return key.lookAlikes
      .filter(({ pair }) => pair.includes(first) && pair.includes(suspect.key))
      .flatMap((pair) => unsettled(key, answers, passedOver, pair, first, suspect))
  })
}

function unsettled(
  key: Key,
  answers: Answers,
  passedOver: readonly string[],
  { traits }: LookAlike,
  first: string,
  suspect: Chance,
): readonly HarmOpen[] {
  const noted = traits.filter((trait) => answers[trait] !== undefined)
  const speaksForFirst = (trait: string) =>
    key.chance(first, trait, answers[trait]) >= key.chance(suspect.key, trait, answers[trait])
  if (noted.some(speaksForFirst)) return []
  const look = traits
    .filter((trait) => answers[trait] === undefined && !passedOver.includes(trait))
    .flatMap((wanted) => key.traits.filter((one) => one.key === wanted && one.contact !== 'touch'))[0]
  return [{ suspect, spoken: noted.length > 0, ...(look && { look }) }]
}
