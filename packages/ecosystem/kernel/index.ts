/** What TypeScript may ask of the kernel. */

export { useForeign } from './evaluate'
export { keepBooks, place } from './memory'
export { happen, settle } from './processes'
export { stages } from './stages'
export { begin, between, error, fastestLoss, length, lowest, restage, shift, take, turn } from './step'
