export type * from './answer.ts'
export { reachOf } from './reach.ts'
