import { consumptionId, grazer, type Range } from '@holdfast/facts'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { settingIndex, stateIndex } from '../assemble/model.ts'
import { spreads } from '../processes/stands.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import type { System } from '../system.ts'
import { box, plate } from './systems.ts'

export interface Offered {
  /** Without it the animal's best temperature, at which the table's consumption holds. */
  readonly temperature_C?: number
  /** Where in its band the consumption of the animal is. */
  readonly consumption?: keyof Range
  /** True: nothing is fed by hand, and the whole appetite is for algae. */
  readonly unfed?: true
  /** How high the stand is, mm; without it low enough for every mouth. */
  readonly height_mm?: number
}

/** Far thicker than a full stand: no want of food can be the reason for eating less. */
const plenty = 1e10

/**
 * Dry algae that one animal takes in a day in the simulation where one kind stands in plenty on rock, g;
 * undefined where the animal has no taste for it or does not get there.
 */
export function offeredAlone(taxon: string, kind: string, offered: Offered = {}): number | undefined {
  const animal = grazer(taxon)
  const system: System = {
    ...box,
    temperature_C: offered.temperature_C ?? animal?.temperature_C.best ?? box.temperature_C,
    surfaces: [{ ...plate, area_m2: 100 }],
    algae: [{ kind, surface: 'plate', cover: 1 }],
    animals: [{ kind: taxon, taxon, count: 1, role: 'grazer' }],
  }
  const model = assemble(system)
  if (!model.blocks.some(({ process }) => process.id === 'grazing')) return undefined
  const parameters = typicalParameters(model)
  const place = (fact: string): number => model.parameters.findIndex((one) => one.fact === fact)
  const consumption = place(consumptionId(taxon))
  parameters[consumption] = model.parameters[consumption].band[offered.consumption ?? 'typical']
  if (offered.unfed) parameters[place(`grazing.appetite_left.${animal?.appetite}`)] = 1
  parameters[place(`algae.${kind}.canopy_height`)] = (offered.height_mm ?? 0) / plenty
  const full = parameters[place(`algae.${kind}.full_cover_mass`)]
  const carbonContent = parameters[place(`algae.${kind}.tissue_C`)]
  const y = new Float64Array(model.states.length)
  y[stateIndex(model, `living.${taxon}`)] = 1
  for (const patch of ['open', 'half_hidden', 'hidden']) {
    const stand = `plate.${kind}.${patch}`
    if (spreads(kind)) y[stateIndex(model, `cover.${stand}`)] = 1
    const area = model.settings.values[settingIndex(model, `area plate ${patch}`)]
    y[stateIndex(model, `surface.${stand}/C`)] = plenty * full * area * carbonContent
  }
  const out = new Float64Array(model.fluxes.length)
  equationsOf(model, parameters, model.settings.values).rates(y, out)
  const carbon = model.fluxes.reduce(
    (sum, flux, k) => (flux.process.id === 'grazing' && flux.atom === 'C' ? sum + out[k] : sum),
    0,
  )
  return carbon / carbonContent
}
