/**
 * The keys that a case may use, by the object they stand in. A key that is not here is reported: what the
 * program does not know must not be passed over in silence. A `*` is a key that must be there.
 */
export type Shape = Readonly<Record<string, Kind>>
export type Kind = 'text' | 'number' | 'yes or no' | 'date' | 'list' | 'object' | 'anything'

const note = { note: 'text', provenance: 'text' } as const

export const caseKeys: Shape = {
  '*id': 'text',
  '*title': 'text',
  situation: 'text',
  '*start': 'date',
  '*asof': 'date',
  '*system': 'object',
  given: 'object',
  '*log': 'object',
  '*expert': 'list',
  invented_system: 'yes or no',
}

export const systemKeys: Shape = {
  '*vessels': 'list',
  flow: 'list',
  surfaces: 'list',
  rock: 'list',
  sand: 'object',
  '*source_water': 'object',
  '*salt_mix': 'object',
  '*salinity_psu': 'number',
  '*temperature_C': 'number',
  pH: 'number',
  '*evaporation_L_per_day': 'number',
  feeds: 'list',
  equipment: 'list',
  animals: 'list',
  corals: 'object',
}

export const partKeys: Readonly<Record<string, Shape>> = {
  vessels: {
    '*id': 'text',
    '*kind': 'text',
    '*volume_L': 'number',
    glass_volume_L: 'number',
    length_cm: 'number',
    ...note,
  },
  flow: { '*a': 'text', '*b': 'text', '*L_per_hour': 'number', ...note },
  surfaces: {
    '*id': 'text',
    '*vessel': 'text',
    '*kind': 'text',
    '*area_m2': 'number',
    '*light_umol_m2_s': 'number',
    '*light_h_per_day': 'number',
    age_days: 'number',
    enclosed: 'yes or no',
    opening_mm: 'number',
    hand_cleaned_every_days: 'number',
    ...note,
  },
  rock: { '*kind': 'text', '*mass_kg': 'number', age_days: 'number', cured_days: 'number', ...note },
  feeds: {
    '*kind': 'text',
    '*g_per_day': 'number',
    '*N_mass_fraction': 'number',
    '*P_mass_fraction': 'number',
    C_mass_fraction: 'number',
    dry_fraction: 'number',
    ...note,
  },
  animals: {
    '*kind': 'text',
    taxon: 'text',
    '*count': 'number',
    mass_g: 'number',
    adult_size_cm: 'number',
    role: 'text',
    ...note,
  },
}

export const equipmentKeys: Readonly<Record<string, Shape>> = {
  'water change': { '*volume_L': 'number', '*every_days': 'number', water: 'anything', skipped: 'list' },
  'filter floss': { changed_every_days: 'number', mesh_um: 'number' },
  'filter sock': { changed_every_days: 'number', mesh_um: 'number' },
  skimmer: {
    rated_for_L: 'number',
    air_L_per_hour: 'number',
    cup_emptied_every_days: 'number',
    off: 'list',
  },
  'ferric media reactor': {
    '*mass_g': 'number',
    flow_L_per_hour: 'number',
    placed: 'date',
    removed: 'date',
    replaced_every_days: 'number',
    capacity_mg_P_per_g: 'list',
    capacity_provenance: 'text',
  },
  'activated carbon': { mass_g: 'number', placed: 'date', replaced_every_days: 'number' },
  'organic carbon dosing': { substance: 'text', mL_per_day: 'number', since: 'date', schedule: 'list' },
  refugium: {
    vessel: 'text',
    algae: 'text',
    wet_mass_g: 'number',
    dry_fraction: 'number',
    N_of_dry: 'number',
    P_of_dry: 'number',
    lit_area_m2: 'number',
    light_umol_m2_s: 'number',
    light_h_per_day: 'number',
    light_off_since: 'date',
    harvest_g_wet: 'number',
    harvest_every_days: 'number',
    last_harvest: 'date',
  },
  'turf scrubber': {
    screen_m2: 'number',
    light_umol_m2_s: 'number',
    light_h_per_day: 'number',
    harvest_every_days: 'number',
  },
  'automatic top-off': { reservoir_L: 'number' },
  'circulation pump': {},
  'ultraviolet lamp': {},
  heater: {},
}

/** Other names under which a case may speak of the same equipment. */
export const equipmentNames: Readonly<Record<string, string>> = { 'foam fractionator': 'skimmer' }

export const eventKeys: Readonly<Record<string, Shape>> = {
  'water change': { '*volume_L': 'number', water: 'anything', every_days: 'number' },
  'top-off': { '*volume_L': 'number', water: 'anything' },
  'top-off empty': { '*days': 'number' },
  'top-off changed': { '*water': 'anything', until: 'date' },
  'media placed': { '*mass_g': 'number', media: 'text' },
  'media removed': { mass_g: 'number', media: 'text' },
  'rock added': { '*rock_kind': 'text', '*mass_kg': 'number' },
  dose: { '*substance': 'text', '*mass_g': 'number' },
  'dose change': { substance: 'text', '*to': 'number', unit: 'text' },
  harvest: { '*wet_g': 'number' },
  'feed change': { '*g_per_day': 'number' },
  'equipment change': { '*equipment': 'text' },
  'animals added': { '*taxon': 'text', '*count': 'number', mass_g: 'number' },
  'animals lost': { '*taxon': 'text', '*count': 'number', mass_g: 'number' },
  survey: { '*surface': 'text', '*algae': 'text', '*cover': 'number', height_mm: 'number' },
  observation: { '*traits': 'object' },
  note: { '*text': 'text' },
}

export const readingKeys: Shape = {
  '*date': 'date',
  '*quantity': 'text',
  '*value': 'number',
  unit: 'text',
  form: 'text',
  below_detection: 'yes or no',
  note: 'text',
}

export const statementKeys: Shape = {
  '*id': 'text',
  '*statement': 'text',
  '*check': 'object',
  '*expected': 'object',
  reason: 'text',
  provenance: 'text',
  '*strength': 'text',
}

export const expectedKeys = ['equals', 'one_of', 'range', 'includes', 'excludes'] as const
