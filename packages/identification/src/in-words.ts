import { finerKind } from '@holdfast/facts'
import type { Identification } from './identify.ts'
import type { Chance } from './key.ts'

/** A kind alone is named from here on; under it the next one is named too. */
const namedAloneFrom = 0.85

/** Kinds less likely than this are not worth a word. */
const leastLikely = 0.05

/** Percent without decimals, such as 56 %. */
export const percentOf = ({ chance }: Pick<Chance, 'chance'>): string => `${Math.round(100 * chance)}\u00a0%`

const named = (one: Chance): string => `${one.title} (${percentOf(one)})`

/** What the growth is, in a sentence. */
export function findingInWords({ chances, ends, suspect, finer }: Identification): string {
  const [first] = chances
  const likely = chances.slice(0, 3).filter(({ chance }, i) => i === 0 || chance >= leastLikely)
  if (suspect !== undefined)
    return `It looks like ${named(first)}, but what you noted speaks for ${suspect.title} too.`
  if (ends === 'not yet') return `So far: ${likely.map(named).join(', ')}.`
  if (ends === 'open') return `It may be ${orList(likely)}.`
  if (first.chance < namedAloneFrom && likely.length > 1) return `It is ${orList(likely)}.`
  if (finer?.ends !== 'agreed') return `It is most likely ${named(first)}.`
  const [genus] = finer.chances
  const hazard = finerKind(genus.key)?.hazard ?? ''
  return `It is most likely ${named(first)}, and within it most likely ${named(genus)}. ${hazard}`.trim()
}

/** What to do on what is known, in a sentence or two. */
export function actInWords({ best, ends, finer, chances, handsOff }: Identification): string {
  if (ends === 'not yet') return handsOff ? 'Hands off until it is known: it may be toxic slime.' : ''
  if (ends === 'open')
    return handsOff
      ? 'Not sure, and it does not matter yet: siphon it with a thin hose that is never started by mouth, gloves and glasses on, photograph it, and look again in a week.'
      : 'Not sure, and it does not matter yet: photograph it, and look again in a week.'
  const [first, second] = chances
  const same =
    first.chance < namedAloneFrom && best.response.kinds.includes(second.key)
      ? 'What to do is the same for both. '
      : ''
  const act = `${same}${best.response.title}. ${best.response.does}`
  if (finer?.ends !== 'agreed' || finer.best.response.key === best.response.key) return act
  return `${act} ${finer.best.response.title}: ${decapitalised(finer.best.response.does)}`
}

const decapitalised = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

const orList = (kinds: readonly Chance[]): string => {
  const words = kinds.map(named)
  const last = words.at(-1) ?? ''
  return words.length > 1 ? `${words.slice(0, -1).join(', ')} or ${last}` : last
}
