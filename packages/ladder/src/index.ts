export type * from './answer.ts'
export { ladder } from './ladder.ts'
export { mediumLeft } from './medium-left.ts'
export type * from './question.ts'
