import { type About, type Blank, type Choice, choicesOf } from './blank.ts'
import { type EquipmentSetting, inUnitOf, settingsOf } from './equipment-settings.ts'
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
    const equipment = filled.words('equipment')
    const known = settingsOf(equipment).find(({ key }) => key === setting)
    if (known === undefined) throw new Error(`${equipment} has no setting ${setting}`)
    const value =
      known.holds === 'choice' ? filled.words('value') === 'on' : inUnitOf(known, filled.number('value'))
    return {
      equipment,
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

const equipmentOf = ({ system }: About): readonly string[] =>
  (system?.equipment ?? []).map(({ kind }) => kind)

function valueBlank(setting: EquipmentSetting | undefined): Blank {
  const blank = { name: 'value', label: 'New value', required: true } as const
  if (setting === undefined) return { ...blank, holds: 'words', hint: 'Once it is said what changed' }
  if (setting.holds === 'choice')
    return { ...blank, holds: 'choice', hint: setting.example, choices: choicesOf(['on', 'off']) }
  return { ...blank, holds: setting.holds, hint: setting.example }
}

const textOf = ({ typed }: Filled): string => [typed.setting, typed.value].join(' ')
