export { dataFolder, type Surroundings } from './data-folder.ts'
export { type OpenOptions, openLogbook } from './open.ts'
export { markRunning, runningOn, unmark } from './running.ts'
