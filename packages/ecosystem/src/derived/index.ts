export * from './ammonia.ts'
export * from './cover.ts'
export * from './organic-carbon.ts'
export * from './oxygen.ts'
