import { factsOfOrganics, factsOfOxygen, factsOfStart, type Model } from '@holdfast/ecosystem'
import { coralBands } from '@holdfast/facts'
import { factsOfReadings } from './kit.ts'

/** What the answers rest on beside the equations: the first day, what is derived, readings, bands. */
const besides: ReadonlySet<string> = new Set([
  ...Object.values(factsOfStart),
  ...Object.values(factsOfOxygen),
  ...Object.values(factsOfOrganics),
  ...factsOfReadings,
  ...coralBands().flatMap(({ nitrate, phosphate }) => [nitrate, phosphate]),
])

/** Whether anything that is answered of a system rests on the number of a fact, or would if the keeper set it. */
export const restsOn = ({ factsAsked }: Pick<Model, 'factsAsked'>, id: string): boolean =>
  factsAsked.has(id) || besides.has(id)
