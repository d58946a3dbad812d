export {
  ammoniumPkCleggWhitfield1995,
  unIonisedAmmoniaFraction,
  unIonisedAmmoniaFractionFreeScale,
} from './ammonia.ts'
export { densityEos80 } from './density.ts'
export {
  changeFractionNeeded,
  changesNeeded,
  changesToShareOfEndValue,
  concentrationAfterChanges,
  concentrationAfterContinuousExchange,
  type Dilution,
  exchangedVolumesNeeded,
  fractionReplacedByChanges,
  fractionReplacedContinuously,
} from './dilution.ts'
export { type Compound, compoundNamed, compounds, doseMass, massFraction } from './dose-mass.ts'
export { OutOfRange, type RangeIssue } from './out-of-range.ts'
export { freeAboveTotalScale } from './ph-scales.ts'
export {
  afterEvaporation,
  afterTakingOut,
  mixed,
  type SaltyWater,
  salinityOf,
  saltyWater,
  topOffVolume,
  volumeOf,
} from './salinity-by-evaporation.ts'
