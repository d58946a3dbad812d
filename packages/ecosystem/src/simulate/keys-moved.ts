const lamp = ['light_umol_m2_s', 'light_h_per_day'] as const
const filter = ['mesh_um', 'changed_every_days'] as const

/** Keys of equipment that a change in the log moves; a change of any other is for people and moves nothing. */
export const keysMoved = {
  'water change': ['volume_L', 'every_days'],
  skimmer: ['running', 'rated_for_L', 'air_L_per_hour', 'cup_emptied_every_days'],
  'ferric media reactor': ['running', 'mass_g', 'flow_L_per_hour', 'replaced_every_days'],
  'filter floss': filter,
  'filter sock': filter,
  'activated carbon': ['mass_g', 'replaced_every_days'],
  'organic carbon dosing': ['mL_per_day', 'mL_ethanol_per_day'],
  'continuous water change': ['L_per_day'],
  'phosphate binder': ['La_mg_per_day'],
  'denitrifying reactor': ['media_L', 'flow_L_per_hour'],
  'ultraviolet lamp': ['flow_L_per_hour'],
  refugium: lamp,
  'turf scrubber': lamp,
} as const

/** The same as a type, for what may know of the model nothing else. */
export type KeysMoved = { readonly [K in keyof typeof keysMoved]: (typeof keysMoved)[K][number] }
