import type { Equipment } from '@holdfast/ecosystem'

import { type About, type Blank, type Choice, choicesOf } from './blank.ts'
import type { Filled } from './fill-in.ts'
import { asTyped, kind, name, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** From this day on the equipment named runs with the values named in `changes`, in the units of their keys. */
export const equipmentChange = kind({
  name: 'equipment-change',
  title: 'Change of equipment',
  v: 1,
  body: { equipment: name, changes: z.record(z.string(), z.unknown()), text: asTyped, typed: typedTexts },
  blanks: (about, { equipment = '', setting = '' }) => [
    {
      name: 'equipment',
      label: 'Equipment',
      holds: 'choice',
      required: true,
      hint: 'A part of the system',
      choices: choicesOf(equipmentOf(about)),
      open: true,
    },
    {
      name: 'setting',
      label: 'What changed',
      holds: 'choice',
      required: true,
      hint: 'Switched on or off, or one of its settings',
      choices: settingsOf(equipment).map(({ key, label }): Choice => ({ value: key, words: label })),
    },
    valueBlank(settingsOf(equipment).find(({ key, label }) => key === setting || label === setting)),
  ],
  understand: (filled) => {
    const setting = filled.words('setting')
    const value = setting === 'running' ? filled.words('value') === 'on' : filled.number('value')
    return {
      equipment: filled.words('equipment'),
      changes: { [setting]: value },
      text: textOf(filled),
      typed: filled.typed,
    }
  },
  fills: ({ equipment, changes }) => {
    const [[setting, value] = ['', ''], ...others] = Object.entries(changes)
    // Blanks hold one change: of several none is begun with, so that the others are not lost unseen.
    if (others.length > 0) return { equipment }
    const unit = settingsOf(equipment).find(({ key }) => key === setting)?.unit
    if (typeof value === 'number' && unit !== undefined)
      return { equipment, setting, value: `${value} ${unit}` }
    return { equipment, setting, value: value === true ? 'on' : 'off' }
  },
  says: (body) => {
    const { equipment, changes } = body
    const said = Object.entries(changes).map(([setting, value]) => {
      if (setting === 'running') return value === true ? 'switched on' : 'switched off'
      const known = settingsOf(equipment).find(({ key }) => key === setting)
      if (known === undefined || typeof value !== 'number') return `${setting} ${String(value)}`
      return `${known.label} ${figure(value)} ${known.unit}`
    })
    return inWordsOf(body, `Change of ${equipment}: ${said.join(', ')}`)
  },
  settles: ({ equipment, changes }) => [equipment, ...Object.keys(changes)].join(' '),
})

interface Setting {
  readonly key: string
  readonly label: string
  readonly holds: 'flow' | 'volume' | 'duration' | 'choice'
  readonly unit: string
  readonly example: string
}

const running = {
  key: 'running',
  label: 'on or off',
  holds: 'choice',
  unit: '',
  example: 'on or off',
} as const

/** What can be set on a kind of equipment beside switching it; keys are those of the description. */
const settings: Readonly<Partial<Record<Equipment['kind'], readonly Setting[]>>> = {
  'water change': [
    { key: 'volume_L', label: 'volume', holds: 'volume', unit: 'L', example: 'Such as 60 L' },
    { key: 'every_days', label: 'interval', holds: 'duration', unit: 'd', example: 'Such as 14 d' },
  ],
  skimmer: [
    running,
    { key: 'air_L_per_hour', label: 'air', holds: 'flow', unit: 'L/h', example: 'Such as 300 L/h' },
    {
      key: 'cup_emptied_every_days',
      label: 'interval of emptying the cup',
      holds: 'duration',
      unit: 'd',
      example: 'Such as 3 d',
    },
  ],
  'ferric media reactor': [
    running,
    { key: 'flow_L_per_hour', label: 'flow', holds: 'flow', unit: 'L/h', example: 'Such as 100 L/h' },
    {
      key: 'replaced_every_days',
      label: 'interval of replacing the media',
      holds: 'duration',
      unit: 'd',
      example: 'Such as 60 d',
    },
  ],
}

const settingsOf = (equipment: string): readonly Setting[] =>
  Object.entries(settings).find(([kind]) => kind === equipment)?.[1] ?? [running]

const equipmentOf = ({ system }: About): readonly string[] =>
  (system?.equipment ?? []).map(({ kind }) => kind)

function valueBlank(setting: Setting | undefined): Blank {
  const blank = { name: 'value', label: 'New value', required: true } as const
  if (setting === undefined) return { ...blank, holds: 'words', hint: 'Once it is said what changed' }
  if (setting.holds === 'choice')
    return { ...blank, holds: 'choice', hint: setting.example, choices: choicesOf(['on', 'off']) }
  return { ...blank, holds: setting.holds, hint: setting.example }
}

const textOf = ({ typed }: Filled): string => [typed.setting, typed.value].join(' ')
