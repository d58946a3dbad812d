export type * from './answer.ts'
export { commissioning } from './commissioning.ts'
export { startUpQuestion } from './start-up-question.ts'
