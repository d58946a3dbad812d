export { dataFolder, type Surroundings } from './data-folder.ts'
export { type Opened, type OpenOptions, openLogbook } from './open.ts'
