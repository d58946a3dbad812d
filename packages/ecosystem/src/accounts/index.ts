export * from './inside.ts'
export * from './outside.ts'
export * from './surface.ts'
export * from './water.ts'
