export { exp } from './exponential.ts'
export { ln } from './logarithm.ts'
export { pow } from './power.ts'
export { tanh } from './tanh.ts'
