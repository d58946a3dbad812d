import { type Caution, cautions, type Response, type Trait } from '@holdfast/facts'
import { type Chance, chanceOf } from './key.ts'
import { slimeFrom } from './next-question.ts'

/** Tools that are not tank water. */
const burning: readonly string[] = ['cup and peroxide', 'nail and vinegar']

/**
 * The cautions that stand before the next look and before what to do, the gravest first.
 *
 * @param chances     of the kinds of the field key
 * @param maybeSlime  whether it may be toxic slime
 * @param acts        what is proposed to be done
 */
export function cautionsFor(
  chances: readonly Chance[],
  maybeSlime: boolean,
  next: Trait | undefined,
  acts: readonly Response[],
): readonly Caution[] {
  const handled = next !== undefined && next.contact !== 'none'
  const minded = new Set([
    ...acts.flatMap((act) => act.cautions ?? []),
    ...(maybeSlime ? ['palytoxin', 'hot_rock'] : []),
    ...(chanceOf(chances, ['cyano']) > slimeFrom ? ['cyanotoxin'] : []),
    ...(next?.contact === 'hose' ? ['siphon_by_mouth'] : []),
    ...(handled ? ['mains_near_water', 'remove_loosened_algae', 'do_not_release'] : []),
    ...(next !== undefined && burning.includes(next.tool) ? ['acid_or_bleach'] : []),
    ...(chanceOf(chances, ['caulerpa']) > slimeFrom ? ['do_not_release'] : []),
  ])
  return cautions().filter(({ key }) => minded.has(key))
}
