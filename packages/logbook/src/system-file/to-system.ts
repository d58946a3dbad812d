import type { Equipment, System } from '@holdfast/ecosystem'

import { endOfDay, modelDay } from '../model-day.ts'
import type { SystemDocument } from './document.ts'

/** The ecosystem's description out of a document that was found right. */
export function toSystem(document: SystemDocument): System {
  const { name, timeZone, sand, pH, corals } = document
  return {
    id: document.id ?? idOfName(name),
    name,
    timeZone,
    vessels: document.vessels.map(({ id, kind, water, glass, length }) => ({
      id,
      kind,
      volume_L: water,
      ...given('glass_volume_L', glass),
      ...given('length_cm', length),
    })),
    flow: document.flow.map(({ between: [a, b], 'each way': L_per_hour }) => ({ a, b, L_per_hour })),
    surfaces: document.surfaces.map((surface) => ({
      id: surface.id,
      vessel: surface.vessel,
      kind: surface.kind,
      area_m2: surface.area,
      light_umol_m2_s: surface.light,
      light_h_per_day: surface.hours,
      age_days: surface.age,
      ...given('enclosed', surface.enclosed),
      ...given('opening_mm', surface.opening),
      ...given('hand_cleaned_every_days', surface['hand cleaned every']),
    })),
    rock: document.rock.map(({ kind, mass, age, 'cured for': cured }) => ({
      kind,
      mass_kg: mass,
      age_days: age,
      ...given('cured_days', cured),
    })),
    ...given('sand', sand && { mass_kg: sand.mass, depth_cm: sand.depth }),
    source_water: newWater(document['source water']),
    salt_mix: newWater(document['salt mix']),
    salinity_psu: document.salinity,
    temperature_C: document.temperature,
    ...given('pH', pH),
    evaporation_L_per_day: document.evaporation,
    feeds: document.feeds.map((feed, place) => ({
      kind: feed.kind,
      g_per_day: feed.amount,
      ...given('N_mass_fraction', feed.nitrogen),
      ...given('P_mass_fraction', feed.phosphorus),
      ...given('C_mass_fraction', feed.carbon),
      ...given('dry_fraction', feed['dry matter']),
      // Of other places the model asks no wider band than it has.
      ...given('untold', document.unsaid?.includes(`feeds ${place + 1}, amount`) || undefined),
    })),
    equipment: document.equipment.map((one) => equipment(one, timeZone)),
    animals: document.animals.map(({ kind, taxon, count, mass, 'adult size': size, role, vessel }) => ({
      kind,
      ...given('taxon', taxon),
      count,
      ...given('mass_g', mass),
      ...given('adult_size_cm', size),
      role,
      ...given('vessel', vessel),
    })),
    ...given('own_animals', document['own animals']?.map(ownAnimal)),
    ...given('corals', corals && { kind: corals.kind, area_m2: corals.area }),
    algae: document.algae,
  }
}

type OwnAnimal = NonNullable<System['own_animals']>[number]

/** A routine's first change is set at 13:00 and media at noon, a span of dates runs to the end of its last. */
function equipment(one: SystemDocument['equipment'][number], timeZone: string): Equipment {
  const noon = (date: string | undefined): number | undefined =>
    date === undefined ? undefined : modelDay(date, 12, timeZone)
  switch (one.kind) {
    case 'water change': {
      const first = one.first === undefined ? undefined : modelDay(one.first, 13, timeZone)
      return { kind: one.kind, volume_L: one.volume, every_days: one.every, ...given('first', first) }
    }
    case 'skimmer': {
      const off = one.off?.map(([from, to]) => [modelDay(from, 0, timeZone), endOfDay(to, timeZone)] as const)
      return {
        kind: one.kind,
        ...given('rated_for_L', one['rated for']),
        ...given('cup_emptied_every_days', one['cup emptied every']),
        ...given('air_L_per_hour', one.air),
        ...given('off', off),
      }
    }
    case 'ferric media reactor':
      return {
        kind: one.kind,
        ...given('medium', one.medium),
        mass_g: one.mass,
        ...given('flow_L_per_hour', one.flow),
        ...given('placed', noon(one.placed)),
        ...given('removed', noon(one.removed)),
        ...given('replaced_every_days', one['replaced every']),
        ...given('capacity_mg_P_per_g', one.capacity),
      }
    case 'continuous water change':
      return { kind: one.kind, L_per_day: one['a day'] }
    case 'filter floss':
    case 'filter sock': {
      const { 'changed every': every, mesh, ...kept } = one
      return { ...kept, ...given('changed_every_days', every), ...given('mesh_um', mesh) }
    }
    case 'phosphate binder':
      return { kind: one.kind, La_mg_per_day: one['lanthanum a day'] }
    case 'activated carbon': {
      const { mass, placed, 'replaced every': every, ...kept } = one
      return {
        ...kept,
        ...given('mass_g', mass),
        ...given('placed', noon(placed)),
        ...given('replaced_every_days', every),
      }
    }
    case 'organic carbon dosing': {
      const { 'a day': daily, since, schedule, ...kept } = one
      return {
        ...kept,
        ...given('mL_per_day', daily),
        ...given('since', noon(since)),
        ...given(
          'schedule',
          schedule?.map(({ from, 'ethanol a day': mL_ethanol_per_day }) => ({
            from_: modelDay(from, 12, timeZone),
            mL_ethanol_per_day,
          })),
        ),
      }
    }
    case 'denitrifying reactor':
      return { kind: one.kind, fed: one.fed, media_L: one.media, ...given('flow_L_per_hour', one.flow) }
    case 'ultraviolet lamp': {
      const { flow, ...kept } = one
      return { ...kept, ...given('flow_L_per_hour', flow) }
    }
    case 'refugium':
      return {
        kind: one.kind,
        ...given('vessel', one.vessel),
        ...given('algae', one.algae),
        ...given('wet_mass_g', one.mass),
        ...given('dry_fraction', one['dry matter']),
        ...given('N_of_dry', one.nitrogen),
        ...given('P_of_dry', one.phosphorus),
        ...given('lit_area_m2', one['lit area']),
        ...given('light_umol_m2_s', one.light),
        ...given('light_h_per_day', one.hours),
        ...given('light_off_since', noon(one['dark since'])),
        ...given('harvest_g_wet', one.harvest),
        ...given('harvest_every_days', one['harvested every']),
        ...given('last_harvest', noon(one['last harvest'])),
      }
    case 'turf scrubber':
      return {
        kind: one.kind,
        ...given('screen_m2', one.screen),
        ...given('light_umol_m2_s', one.light),
        ...given('light_h_per_day', one.hours),
        ...given('harvest_every_days', one['harvested every']),
      }
    default:
      return one
  }
}

function ownAnimal(one: NonNullable<SystemDocument['own animals']>[number]): OwnAnimal {
  return {
    taxon: one.taxon,
    like: one.like,
    ...given('adult_size_cm', one['adult size']),
    ...given('wet_mass_g', one.mass),
    ...given('eats_g_per_day', one.eats),
    ...given('needs_g_per_day', one.needs),
    ...given('least_volume_L', one['least glass']),
    ...given('least_length_cm', one['least length']),
    ...given('coldest_C', one.coldest),
    ...given('warmest_C', one.warmest),
    ...given('reef_safe', one['reef safe']),
    ...given('caution', one.caution),
    ...given('lost_in_a_year', one['lost in a year']),
    ...given('price_usd', one['US dollars']),
    ...given('tastes', one.tastes),
  }
}

function newWater(water: SystemDocument['source water']): System['source_water'] {
  return {
    ...given('kind', water.kind),
    ...given('NO3_mg_L', water.nitrate),
    ...given('PO4_mg_L', water.phosphate),
    ...given('SiO2_mg_L', water.silicate),
  }
}

/** A key with its value, or nothing where there is no value. */
function given<Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): { readonly [K in Key]?: Value } {
  // The compiler does not follow a computed key.
  return (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value }
}

/** Small letters, digits and hyphens. */
function idOfName(name: string): string {
  const plain = name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
  return plain.replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || 'system'
}
