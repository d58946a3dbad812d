export * from './between.ts'
export * from './equations.ts'
export * from './integrate.ts'
