export { mayBeStartingUp } from './age.ts'
export type * from './answer.ts'
export { commissioning } from './commissioning.ts'
export { startUpQuestion } from './start-up-question.ts'
export {
  askedWords,
  avoidedWords,
  conditionWords,
  deedWords,
  peakWords,
  shownWords,
  stateWords,
  type Told,
  verdictWords,
  type Writing,
} from './words.ts'
