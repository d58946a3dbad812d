import type { System } from '@holdfast/ecosystem'

import type { Stored } from './entries/entry.ts'
import { movesTheModel, settingsOf } from './entries/equipment-settings.ts'

/** Changes of equipment that move nothing in the model, a sentence for each reason. */
export function equipmentRemarks(entries: readonly Stored[], { equipment }: System): readonly string[] {
  const kinds = new Set<string>(equipment.map(({ kind }) => kind))
  const changes = entries.flatMap((entry) =>
    entry.kind === 'equipment-change'
      ? Object.entries(entry.body.changes).map(([key, value]) => ({ of: entry.body.equipment, key, value }))
      : [],
  )
  const absent = changes.filter(({ of }) => !kinds.has(of)).map(({ of }) => of)
  const unanswered = changes
    .filter(({ of, key, value }) => kinds.has(of) && !(movesTheModel(of, key) && isSettable(value)))
    .map(({ of, key }) => `${of} (${labelOf(of, key)})`)
  return [
    ...remark(absent, 'the system is described without it'),
    ...remark(unanswered, 'the model has no answer'),
  ]
}

const isSettable = (value: unknown): boolean => typeof value === 'number' || typeof value === 'boolean'

const labelOf = (equipment: string, key: string): string =>
  settingsOf(equipment).find((setting) => setting.key === key)?.label ?? key

function remark(named: readonly string[], why: string): readonly string[] {
  if (named.length === 0) return []
  const changes = named.length === 1 ? 'change of equipment moves' : 'changes of equipment move'
  return [`${named.length} ${changes} nothing, since ${why}: ${[...new Set(named)].join(', ')}.`]
}
