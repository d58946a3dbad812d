/** What TypeScript may ask of the kernel. */

export { between, betweenQuick } from './between'
export { fastestLoss, length, shift, turn } from './decay'
export { happen, useForeign } from './evaluate'
export { keepBooks, place } from './memory'
export { settle } from './processes'
export { beginQuick, errorQuick, stepQuick, takeQuick } from './quick'
export { closeStages, firstStage, nextStage } from './stages'
export { begin, error, leaveOut, lowest, putIn, restage, take } from './step'
