import type { PlaceWeek } from '@holdfast/ecosystem'

/** The parts of a surface in words. */
export const patchWords: Readonly<Record<PlaceWeek['patch'], string>> = {
  open: 'in the open',
  half_hidden: 'half hidden',
  hidden: 'in cracks',
}
