export * from './accounts/index.ts'
export * from './assemble/assemble.ts'
export * from './assemble/model.ts'
export { type Account, chosen, type Input, layoutOf } from './declare/index.ts'
export * from './derived/index.ts'
export {
  type Equations,
  type IntegratorSettings,
  NotANumber,
  type Statistics,
  usualSettings,
} from './integrate/index.ts'
export * from './ledger/index.ts'
export type * from './ledger-types.ts'
export type * from './log.ts'
export { crewOf } from './processes/crew.ts'
export { appetiteOf, grazingCapacity, type Place } from './processes/grazing-capacity.ts'
export * from './processes/index.ts'
export { rowsOf } from './processes/predation.ts'
export { livesAt, passes, reaches } from './processes/reach.ts'
export { namedStands, patchShare } from './processes/stands.ts'
export * from './reach/index.ts'
export * from './simulate/index.ts'
export * from './start/start.ts'
export type * from './system.ts'
