import type { WaterQuantity } from './water-quantity.ts'

const balance = 'mass balance, with densities by EOS-80 (Millero & Poisson 1981)'
const scale = 'PSS-78 (Lewis 1980; Fofonoff & Millard 1983)'
const ammonia = 'Bell et al. 2008, Khoo et al. 1977 or Clegg & Whitfield 1995, as the method says'

/** Who published what a function works out, as people cite it; number, page and range stand at the function. */
const citations: Readonly<Record<string, string>> = {
  practicalSalinityPss78: scale,
  practicalSalinityOfRatioPss78: scale,
  conductivityRatioPss78: scale,
  conductivityPss78: scale,
  conductivityAt25C: scale,
  absoluteSalinityMillero2008: 'Millero et al. 2008',
  salinityFromSpecificGravity: 'EOS-80 (Millero & Poisson 1981)',
  salinityFromHydrometer: 'EOS-80 (Millero & Poisson 1981)',
  salinityFromRefractometer: 'Quan & Fry 1995',
  densityEos80: 'EOS-80 (Millero & Poisson 1981)',
  densityTeos10: 'TEOS-10 (IOC, SCOR & IAPSO 2010)',
  freezingPointMillero1978: 'Millero 1978',
  specificGravity: 'EOS-80 (Millero & Poisson 1981)',
  refractiveIndexQuanFry1995: 'Quan & Fry 1995',
  oxygenSaturationGarciaGordon1992: 'Garcia & Gordon 1992',
  oxygenSaturationByVolume: 'Garcia & Gordon 1992',
  oxygenSolubilityWeiss1970: 'Weiss 1970',
  ammoniumPk: ammonia,
  unIonisedAmmoniaFraction: ammonia,
  onScale: 'Dickson, Sabine & Christian 2007; for NBS buffers Takahashi et al. 1982',
  trisBufferPHDelVallsDickson1998: 'DelValls & Dickson 1998',
  lnCarbonDioxideSolubilityWeiss1974: 'Weiss 1974',
  log10CarbonicAcidK1Lueker2000: 'Lueker et al. 2000',
  log10CarbonicAcidK2Lueker2000: 'Lueker et al. 2000',
  lnBoricAcidKDickson1990: 'Dickson 1990',
  lnWaterKMillero1995: 'Millero 1995',
  lnBisulfateKDickson1990: 'Dickson 1990',
  lnFluorideKPerezFraga1987: 'Perez & Fraga 1987',
  log10AragoniteKspMucci1983: 'Mucci 1983',
  log10CalciteKspMucci1983: 'Mucci 1983',
  carbonateSystem: 'Dickson, Sabine & Christian 2007',
  aragoniteSaturation: 'Mucci 1983',
  calciteSaturation: 'Mucci 1983',
  convertUnits: 'the definitions of the units, and molar masses',
  ionByMassMillero2008: 'Millero et al. 2008',
  ionByVolumeMillero2008: 'Millero et al. 2008',
  saltMassForVolume: balance,
  freshWaterForVolume: balance,
  saltyWater: balance,
  mixed: balance,
  salinityOf: balance,
  afterEvaporation: balance,
  topOffVolume: balance,
  saltToRaise: balance,
  replacementVolume: balance,
  concentrationAfterChanges: 'mass balance',
  concentrationAfterContinuousExchange: 'mass balance',
}

/** What a quantity rests on, as people cite it, each once. */
export const citedFor = ({ restsOn }: WaterQuantity): readonly string[] => [
  ...new Set(restsOn.flatMap(({ name }) => citations[name] ?? [])),
]
