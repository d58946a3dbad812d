export * from './account.ts'
export * from './layout.ts'
export * from './process.ts'
export * from './read.ts'
