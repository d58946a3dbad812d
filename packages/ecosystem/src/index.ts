export type * from './system.ts'
export type * from './log.ts'
export type * from './ledger-types.ts'
