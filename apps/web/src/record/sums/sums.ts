import { chemistrySums } from './chemistry-sums.ts'
import { doseSums } from './dose-sums.ts'
import { mixingSums } from './mixing-sums.ts'
import { salinitySums } from './salinity-sums.ts'
import type { Sum } from './sum.ts'

/** The sums of the page, in the order in which they are wanted. */
export const sums: readonly Sum[] = [...salinitySums, ...mixingSums, ...doseSums, ...chemistrySums]
