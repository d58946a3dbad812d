import { events } from '../src/events/index.ts'
import { processes } from '../src/processes/index.ts'
import { generateKernel } from './generate.ts'

/** The kernel of everything that is declared: its source, and how its memory is to be filled. */
export const generated = generateKernel([...processes, ...events])
