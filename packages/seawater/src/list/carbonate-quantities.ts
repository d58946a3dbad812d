import {
  type CarbonateMeasures,
  type CarbonatePair,
  type CarbonateSystem,
  carbonateSystem,
} from '../carbonate/carbonate-system.ts'
import { aragoniteSaturation, calciteSaturation } from '../carbonate/saturation.ts'
import { pH } from '../ph/ph.ts'
import type { Given } from './water-inputs.ts'
import { type Form, form, type WaterQuantity } from './water-quantity.ts'

const water = ['S', 't', 'B_umol_kg'] as const
const withCalcium = [...water, 'Ca_umol_kg'] as const

/** The four that can be given, and what the system calls them. */
const measures = {
  TA_umol_kg: (totalAlkalinity: number) => ({ totalAlkalinity }),
  DIC_umol_kg: (dissolvedInorganicCarbon: number) => ({ dissolvedInorganicCarbon }),
  pH_total: (value: number) => ({ pH: pH('total', value) }),
  pCO2_uatm: (pCO2: number) => ({ pCO2 }),
} as const satisfies Record<string, (value: number) => Partial<CarbonateMeasures>>

const names = Object.keys(measures) as readonly (keyof typeof measures)[]
const pairs = names.flatMap((one, at) => names.slice(at + 1).map((other) => [one, other] as const))

/** The same reading from each of the six pairs. */
function fromAnyPair<Name extends (typeof withCalcium)[number]>(
  inputs: readonly Name[],
  read: (system: CarbonateSystem, given: Given<Name>) => number,
): readonly Form[] {
  return pairs.map(([one, other]) =>
    form(
      [one, other, ...water, ...inputs.filter((input) => !water.some((each) => each === input))],
      (given) => {
        const pair = { ...measures[one](given[one]), ...measures[other](given[other]) } as CarbonatePair
        const { S: salinity, t: temperature, B_umol_kg: boron } = given
        const measured = boron === undefined ? {} : { boron }
        return read(carbonateSystem(pair, { salinity, temperature, ...measured }), given)
      },
    ),
  )
}

function ofTheSystem(
  id: string,
  says: string,
  unit: string,
  read: (system: CarbonateSystem) => number,
): WaterQuantity {
  return { id, says, unit, forms: fromAnyPair([], read), restsOn: [carbonateSystem] }
}

/** What follows from any two of total alkalinity, dissolved inorganic carbon, pH and pCO2. */
export const carbonateQuantities: readonly WaterQuantity[] = [
  ofTheSystem('pH_total', 'pH on the total scale', '1', (system) => system.pH.value),
  ofTheSystem('pCO2', 'partial pressure of CO2', 'uatm', (system) => system.pCO2),
  ofTheSystem('fCO2', 'fugacity of CO2', 'uatm', (system) => system.fCO2),
  ofTheSystem('total_alkalinity', 'total alkalinity', 'umol/kg', (system) => system.totalAlkalinity),
  ofTheSystem(
    'dissolved_inorganic_carbon',
    'dissolved inorganic carbon',
    'umol/kg',
    (system) => system.dissolvedInorganicCarbon,
  ),
  ofTheSystem('carbonate', 'carbonate ion', 'umol/kg', (system) => system.carbonate),
  ofTheSystem('bicarbonate', 'bicarbonate ion', 'umol/kg', (system) => system.bicarbonate),
  ofTheSystem('carbon_dioxide', 'dissolved CO2', 'umol/kg', (system) => system.carbonDioxide),
  {
    id: 'aragonite_saturation',
    says: 'saturation of aragonite',
    unit: '1',
    forms: fromAnyPair(withCalcium, ({ carbonate }, { S, t, Ca_umol_kg }) =>
      aragoniteSaturation(carbonate, S, t, Ca_umol_kg),
    ),
    restsOn: [carbonateSystem, aragoniteSaturation],
  },
  {
    id: 'calcite_saturation',
    says: 'saturation of calcite',
    unit: '1',
    forms: fromAnyPair(withCalcium, ({ carbonate }, { S, t, Ca_umol_kg }) =>
      calciteSaturation(carbonate, S, t, Ca_umol_kg),
    ),
    restsOn: [carbonateSystem, calciteSaturation],
  },
]
