export * from './alkalinity.ts'
export { type ConcentrationUnit, concentrationUnits } from './concentration-units.ts'
export { convert } from './convert.ts'
export type { BaseDimension, Dimension } from './dimension.ts'
export * from './dissolved.ts'
export type { Form, Mineral, Nutrient } from './dissolved-forms.ts'
export type * from './issue.ts'
export type * from './measured.ts'
export {
  type MeasureOptions,
  parseArea,
  parseDensity,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parsePower,
  parseTemperature,
  parseVolume,
} from './measures.ts'
export * from './micromolar.ts'
export { molarMass, type Substance } from './molar-masses.ts'
export { type Figure, type NumberStyle, readFigure } from './number-text.ts'
export { parseUnit, readUnit, UnitError } from './parse-unit.ts'
export {
  isQuantityName,
  type Quantity,
  type QuantityName,
  quantities,
  quantityNames,
  readQuantity,
} from './quantities.ts'
export type { Reading, ReadingOptions } from './reading.ts'
export { type ReadingIn, readingIn, readingInCommonUnits } from './reading-in.ts'
export { type ReferenceTemperatures, referenceTemperatures } from './reference-temperatures.ts'
export * from './salinity.ts'
export { mapStated, type Stated, statedInWords } from './stated.ts'
export * from './unit.ts'
export { words } from './words.ts'
export {
  type Banded,
  type FigureSigns,
  grouped,
  hasSpread,
  type Written,
  written,
  writtenAlone,
} from './written.ts'
