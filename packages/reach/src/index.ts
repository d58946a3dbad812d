export type * from './answer.ts'
export { type Purpose, purposeOf } from './purpose.ts'
export { reachOf } from './reach.ts'
