import type { Trait } from '@holdfast/facts'
import { actInWords, findingInWords, type Identification, percentOf } from '@holdfast/identification'

/** So many kinds are shown at most, and none that rounds to nothing. */
const most = 4
const leastLikely = 0.005

/** What a growth is, what to mind and what to do: cautions before what they are about. */
export function foundInWords(found: Identification): string {
  const { cautions, chances, lookAlikes } = found
  const act = actInWords(found)
  const likely = chances.slice(0, most).filter(({ chance }) => chance >= leastLikely)
  const open = lookAlikes.filter(({ looked, waits }) => !looked && !waits)
  return [
    // The list says how things stand so far.
    found.ends === 'not yet' && found.suspect === undefined ? 'So far:' : findingInWords(found),
    ...likely.map((one) => `  ${percentOf(one).padStart(5)}  ${one.title}`),
    ...(cautions.length > 0 ? ['', ...cautions.map(({ title, says }) => `! ${title}. ${says}`)] : []),
    ...(act === '' ? [] : ['', act]),
    ...(open.length > 0
      ? ['', ...open.map(({ from, test }) => `Or ${from.title} (${percentOf(from)})? ${test}`)]
      : []),
  ].join('\n')
}

/** A question with how to look, its tool and its states, numbered as they are answered. */
export const questionInWords = ({ asks, how, tool, key, states }: Trait): string =>
  [
    `${asks} (${key}, ${tool})`,
    `  ${how}`,
    ...states.map(({ key: state, title }, i) => `  ${String(i + 1).padStart(2)}  ${title} (${state})`),
  ].join('\n')
