export * from './equations-of.ts'
export type * from './moment.ts'
export * from './simulate.ts'
export * from './timeline.ts'
