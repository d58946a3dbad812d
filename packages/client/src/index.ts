export { type Client, holdfastClient } from './client.ts'
export { type Outcome, outcome } from './outcome.ts'
export type { components, paths } from './paths.ts'
