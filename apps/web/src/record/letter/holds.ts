import type { Holds } from './blank.ts'

/** What the blanks of the letter hold, a line each. */
export const volume: Holds = { unit: 'L', amount: 'volume', usual: [20, 2000] }
export const changed: Holds = { unit: 'L', amount: 'volume', usual: [2, 300] }
export const tankLength: Holds = { unit: 'cm', amount: 'length', usual: [30, 300] }
export const flow: Holds = { unit: 'L/h', amount: 'flow', usual: [200, 10_000] }
export const mass: Holds = { unit: 'kg', amount: 'mass', usual: [2, 200] }
export const age: Holds = { unit: 'd', usual: [7, 3650] }
export const interval: Holds = { unit: 'd', usual: [1, 60] }
export const area: Holds = { unit: 'm²', amount: 'area', usual: [0.05, 10] }
export const depth: Holds = { unit: 'cm', amount: 'length', usual: [1, 12] }
export const light: Holds = { unit: 'µmol/m2/s', usual: [5, 400] }
export const temperature: Holds = { unit: '°C', amount: 'temperature', usual: [23, 28] }
export const salinity: Holds = { unit: 'psu', usual: [32, 37] }
export const perDay: Holds = { unit: 'L/d', amount: 'volumeADay', usual: [0.2, 40] }
export const fed: Holds = { unit: 'g/d', usual: [0.1, 40] }
export const share: Holds = { unit: '%', usual: [0.1, 15] }
export const body: Holds = { unit: 'g', usual: [0.5, 500] }
export const size: Holds = { unit: 'cm', amount: 'length', usual: [1, 40] }
export const dryFood: Holds = { unit: 'g dry/d', usual: [0.005, 5] }
export const media: Holds = { unit: 'g', usual: [10, 1000] }
export const dose: Holds = { unit: 'mL/d', usual: [0.1, 40] }
export const nitrate: Holds = { unit: 'mg/L NO3', usual: [0, 20] }
export const phosphate: Holds = { unit: 'mg/L PO4', usual: [0, 1] }
