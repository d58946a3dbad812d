export { ammoniumPkBell2008 } from './ammonia/ammonium-pk-bell-2008.ts'
export { ammoniumPkCleggWhitfield1995 } from './ammonia/ammonium-pk-clegg-whitfield-1995.ts'
export { ammoniumPkKhoo1977 } from './ammonia/ammonium-pk-khoo-1977.ts'
export {
  type AmmoniumMethod,
  ammoniumMethods,
  ammoniumPk,
  unIonisedAmmoniaFraction,
} from './ammonia/un-ionised-ammonia.ts'
export { lnBisulfateKDickson1990 } from './carbonate/bisulfate-k-dickson-1990.ts'
export { lnBoricAcidKDickson1990 } from './carbonate/boric-acid-k-dickson-1990.ts'
export {
  log10AragoniteKspMucci1983,
  log10CalciteKspMucci1983,
} from './carbonate/calcium-carbonate-ksp-mucci-1983.ts'
export { lnCarbonDioxideSolubilityWeiss1974 } from './carbonate/carbon-dioxide-solubility-weiss-1974.ts'
export {
  type CarbonateMeasures,
  type CarbonatePair,
  type CarbonateSystem,
  carbonateSystem,
} from './carbonate/carbonate-system.ts'
export {
  log10CarbonicAcidK1Lueker2000,
  log10CarbonicAcidK2Lueker2000,
} from './carbonate/carbonic-acid-k-lueker-2000.ts'
export type { CarbonateWater } from './carbonate/constants.ts'
export { lnFluorideKPerezFraga1987 } from './carbonate/hydrogen-fluoride-k-perez-fraga-1987.ts'
export { aragoniteSaturation, calciteSaturation } from './carbonate/saturation.ts'
export { lnWaterKMillero1995 } from './carbonate/water-k-millero-1995.ts'
export { densityEos80 } from './density/density-eos80.ts'
export { densityTeos10 } from './density/density-teos10.ts'
export { freezingPointMillero1978 } from './density/freezing-point-millero-1978.ts'
export {
  glassExpansionPerKelvin,
  salinityFromHydrometer,
  salinityFromSpecificGravity,
  specificGravity,
} from './density/specific-gravity.ts'
export {
  oxygenSaturationByVolume,
  oxygenSaturationGarciaGordon1992,
} from './gases/oxygen-garcia-gordon-1992.ts'
export { oxygenSolubilityWeiss1970 } from './gases/oxygen-weiss-1970.ts'
export { waterVapourWeissPrice1980 } from './gases/water-vapour-weiss-price-1980.ts'
export { askWater, type WaterAnswer, type WaterIssue } from './list/ask-water.ts'
export { citedFor } from './list/cited-for.ts'
export { codesOfOneKind, convertUnits, needsDensity, type UnitCode, unitCodes } from './list/convert-units.ts'
export { canBeLeftOut, type InputName, inputNamed, waterInputs } from './list/water-inputs.ts'
export { waterQuantities, waterQuantityNamed } from './list/water-quantities.ts'
export type { Form, WaterQuantity } from './list/water-quantity.ts'
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
} from './mixing/dilution.ts'
export { type Compound, compoundNamed, compounds, doseMass, massFraction } from './mixing/dose-mass.ts'
export { type Ion, ionByMassMillero2008, ionByVolumeMillero2008, ions } from './mixing/ions-millero-2008.ts'
export { type Replacement, replacementVolume } from './mixing/replacement.ts'
export {
  afterEvaporation,
  afterTakingOut,
  mixed,
  type SaltyWater,
  salinityOf,
  saltyWater,
  topOffVolume,
  volumeOf,
} from './mixing/salinity-by-evaporation.ts'
export { freshWaterForVolume, saltMassForVolume, saltToRaise } from './mixing/salt-mass.ts'
export {
  refractiveIndexQuanFry1995,
  salinityFromRefractometer,
  sodiumLight_nm,
} from './optics/refractive-index-quan-fry-1995.ts'
export { OutOfRange, type RangeIssue } from './out-of-range.ts'
export { type PH, type PHScale, pH } from './ph/ph.ts'
export { freeAboveTotalScale, onScale } from './ph/ph-scales.ts'
export { trisBufferPHDelVallsDickson1998 } from './ph/tris-buffer-delvalls-dickson-1998.ts'
export { absoluteSalinityMillero2008 } from './salinity/absolute-salinity-millero-2008.ts'
export {
  conductivityAt25C,
  conductivityPss78,
  conductivityRatioPss78,
  practicalSalinityOfRatioPss78,
  practicalSalinityPss78,
} from './salinity/practical-salinity-pss78.ts'
