import type { KeysMoved } from '@holdfast/ecosystem'
import { convert, type QuantityName, quantities } from '@holdfast/quantities'

/** What can be set on equipment; its key is that of the description. */
export interface EquipmentSetting {
  readonly key: string
  readonly label: string
  readonly holds: 'flow' | 'volume' | 'mass' | 'mass-per-day' | 'length' | 'light' | 'duration' | 'choice'
  /** Unit of the key. */
  readonly unit: string
  readonly example: string
}

type Words = Omit<EquipmentSetting, 'key'>

const running = { label: 'on or off', holds: 'choice', unit: '', example: 'on or off' } as const
const flow = (example: string, label = 'flow'): Words => ({ label, holds: 'flow', unit: 'L/h', example })
const interval = (of: string, example: string): Words => ({
  label: `interval of ${of}`,
  holds: 'duration',
  unit: 'd',
  example,
})

const lamp = {
  light_umol_m2_s: {
    label: 'light while the lamp is on',
    holds: 'light',
    unit: 'µmol photons/m²/s',
    example: 'Such as 200 µmol/m2/s',
  },
  light_h_per_day: {
    label: 'hours of light a day',
    holds: 'duration',
    unit: 'h',
    example: 'Such as 10 h, 0 h for a lamp that is off',
  },
} as const

const filter = {
  changed_every_days: interval('changing it', 'Such as 4 d'),
  mesh_um: { label: 'mesh', holds: 'length', unit: 'µm', example: 'Such as 200 µm' },
} as const

const mL = (label: string): Words => ({ label, holds: 'flow', unit: 'mL/d', example: 'Such as 5 mL/d' })

/** What moves the model; the compiler holds it to the keys that the model answers to. */
const moving: { readonly [K in keyof KeysMoved]: { readonly [Key in KeysMoved[K]]: Words } } = {
  'water change': {
    volume_L: { label: 'volume', holds: 'volume', unit: 'L', example: 'Such as 60 L' },
    every_days: { label: 'interval', holds: 'duration', unit: 'd', example: 'Such as 14 d' },
  },
  skimmer: {
    running,
    rated_for_L: { label: 'rating', holds: 'volume', unit: 'L', example: 'Such as 600 L' },
    air_L_per_hour: flow('Such as 300 L/h', 'air'),
    cup_emptied_every_days: interval('emptying the cup', 'Such as 3 d'),
  },
  'ferric media reactor': {
    running,
    mass_g: { label: 'dry mass', holds: 'mass', unit: 'g', example: 'Such as 150 g' },
    flow_L_per_hour: flow('Such as 100 L/h'),
    replaced_every_days: interval('replacing the media', 'Such as 60 d'),
  },
  'filter floss': filter,
  'filter sock': filter,
  'activated carbon': {
    mass_g: { label: 'dry mass', holds: 'mass', unit: 'g', example: 'Such as 150 g' },
    replaced_every_days: interval('replacing it', 'Such as 30 d'),
  },
  'organic carbon dosing': {
    mL_per_day: mL('dose a day'),
    mL_ethanol_per_day: mL('ethanol a day'),
  },
  'continuous water change': {
    L_per_day: { label: 'water a day', holds: 'flow', unit: 'L/d', example: 'Such as 4 L/d' },
  },
  'phosphate binder': {
    La_mg_per_day: {
      label: 'lanthanum a day',
      holds: 'mass-per-day',
      unit: 'mg',
      example: 'Such as 20 mg/d',
    },
  },
  'denitrifying reactor': {
    media_L: { label: 'media', holds: 'volume', unit: 'L', example: 'Such as 2 L' },
    flow_L_per_hour: flow('Such as 3 L/h'),
  },
  'ultraviolet lamp': { flow_L_per_hour: flow('Such as 400 L/h, 0 L/h for a lamp that is off') },
  refugium: lamp,
  'turf scrubber': lamp,
}

const byKind: Readonly<Record<string, Readonly<Record<string, Words>>>> = moving

const movingOf = (equipment: string): readonly EquipmentSetting[] =>
  Object.entries(byKind[equipment] ?? {}).map(([key, words]) => ({ key, ...words }))

/** What can be set on a kind of equipment; of what has no process, on or off, for people. */
export function settingsOf(equipment: string): readonly EquipmentSetting[] {
  const settings = movingOf(equipment)
  return settings.length > 0 ? settings : [{ key: 'running', ...running }]
}

/** Whether the model answers to a change of this key on this kind of equipment. */
export const movesTheModel = (equipment: string, key: string): boolean =>
  movingOf(equipment).some((setting) => setting.key === key)

/** A value that a blank was read as, in the unit of its key; the last bits of the way there are dropped. */
export function inUnitOf({ holds, unit }: EquipmentSetting, value: number): number {
  if (holds === 'choice') return value
  const quantity: QuantityName = holds === 'mass-per-day' ? 'mass' : holds
  return Number(convert(value, quantities[quantity].canonical, unit).toPrecision(14))
}
