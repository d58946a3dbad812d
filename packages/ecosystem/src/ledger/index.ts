export * from './border.ts'
export * from './ledger.ts'
