import { events } from '../src/events/index.ts'
import { processes } from '../src/processes/index.ts'

export { generateKernel } from './generate.ts'

/** Everything that is compiled: processes and events. */
export const declarations = [...processes, ...events]
