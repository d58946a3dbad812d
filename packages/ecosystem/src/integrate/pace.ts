import { pow } from '@holdfast/elementary'

/** How the length of a step follows its error: the next one is planned to err by half of what is allowed. */
export function paceOf(error: number): number {
  return error > 0 ? Math.max(0.1, Math.min(5, 0.8 * pow(error, -1 / 3))) : 5
}
