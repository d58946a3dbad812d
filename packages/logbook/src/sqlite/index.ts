export { dataFolder, type Surroundings } from './data-folder.ts'
export { type OpenOptions, openLogbook } from './open.ts'
