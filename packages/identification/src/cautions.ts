import { type Caution, caution, type Trait } from '@holdfast/facts'
import { type Chance, chanceOf } from './key.ts'
import { slimeFrom } from './next-question.ts'

/** Tools that are not tank water. */
const burning: readonly string[] = ['cup and peroxide', 'nail and vinegar']

/**
 * The cautions that stand before the question and the act, the gravest first.
 *
 * @param chances     of the kinds of the field key
 * @param maybeSlime  whether it may be toxic slime
 */
export function cautionsFor(
  chances: readonly Chance[],
  maybeSlime: boolean,
  next: Trait | undefined,
): readonly Caution[] {
  const handled = next !== undefined && next.contact !== 'none'
  return [
    ...(maybeSlime ? ['palytoxin', 'hot_rock'] : []),
    ...(chanceOf(chances, ['cyano']) > slimeFrom ? ['cyanotoxin'] : []),
    ...(handled ? ['mains_near_water'] : []),
    ...(next !== undefined && burning.includes(next.tool) ? ['acid_or_bleach'] : []),
    ...(handled ? ['remove_loosened_algae'] : []),
    ...(handled || chanceOf(chances, ['caulerpa']) > slimeFrom ? ['do_not_release'] : []),
  ].map(caution)
}
