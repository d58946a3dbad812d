import type { Day, Surface, System } from '@holdfast/ecosystem'

/** The longest that a start-up takes: rock that was full of life cures for two to six months (common practice). */
const longest_days = 180

const isOfRock = ({ kind }: Surface): boolean => kind === 'rock_face' || kind === 'rock_underside'

/**
 * Whether a system may still be in its start-up: as long as its glass and sand have been wet, or its rock where
 * nothing else is described. Rock out of another tank may be older than the tank.
 *
 * @param from  the day on which its log begins, to which the ages of the description belong
 */
export function mayBeStartingUp(
  { surfaces }: Pick<System, 'surfaces'>,
  { from, asOf }: { readonly from: Day; readonly asOf: Day },
): boolean {
  const own = surfaces.filter((surface) => !isOfRock(surface))
  const ages = (own.length > 0 ? own : surfaces).map(({ age_days }) => age_days)
  return ages.length > 0 && Math.max(...ages) + asOf - from <= longest_days
}
