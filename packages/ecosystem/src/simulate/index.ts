export * from './equations-of.ts'
export * from './simulate.ts'
export * from './timeline.ts'
