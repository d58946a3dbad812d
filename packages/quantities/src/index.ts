export { convert } from './convert.ts'
export type { BaseDimension, Dimension } from './dimension.ts'
export type {
  Answer,
  Asked,
  Issue,
  IssueCode,
  NextStep,
  Option,
  Question,
  QuestionCode,
  Refused,
  Understood,
} from './issue.ts'
export { molarMass, type Substance } from './molar-masses.ts'
export { parseUnit, readUnit, UnitError } from './parse-unit.ts'
export {
  dimensionless,
  divideUnits,
  equalUnits,
  multiplyUnits,
  powerUnit,
  sameDimension,
  type Unit,
} from './unit.ts'
