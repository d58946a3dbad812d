import type { PlaceWeek } from '@holdfast/ecosystem'

/** Of the week that is looked at. */
export const days = 7

/** What nobody eats of a week's growth, g dry; a stand that is eaten down leaves nothing. */
export const leftAt = ({ growth_g_d, grazed_g_d }: PlaceWeek): number => {
  const eaten = [...grazed_g_d.values()].reduce((sum, grams) => sum + grams, 0)
  return days * Math.max(0, Math.max(0, growth_g_d) - eaten)
}

/** The patch of a stand, as a key. */
export const patchOf = ({ surface, patch }: Pick<PlaceWeek, 'surface' | 'patch'>): string =>
  `${surface} ${patch}`
