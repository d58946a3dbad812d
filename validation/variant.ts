/** A case with parts of its system replaced, as a check's `variant` says. */
import { CannotAnswer, waterVolume } from './answers/answer.ts'
import type { CaseFile, CaseSystem } from './case-file.ts'
import { systemKeys } from './case-keys.ts'

const systemParts = Object.keys(systemKeys).map((key) => key.replace('*', ''))

/**
 * Keys of the system replace that part (`source_water` and `salt_mix` key by key); `change_fraction`,
 * `change_volume_L`, `change_every_days` set the routine of water changes; `feed_factor` scales all feeds.
 *
 * @throws CannotAnswer for a key that is none of these
 */
export function withVariant(file: CaseFile, variant: unknown): CaseFile {
  if (variant === undefined) return file
  if (typeof variant !== 'object' || variant === null) throw new CannotAnswer('variant: is no object')
  let changed: CaseFile = { ...file, variantOf: file }
  for (const [key, value] of Object.entries(variant))
    changed = { ...changed, system: withPart(changed, key, value) }
  return changed
}

function withPart(file: CaseFile, key: string, value: unknown): CaseSystem {
  const { system } = file
  switch (key) {
    case 'source_water':
    case 'salt_mix':
      return { ...system, [key]: { ...system[key], ...(value as object) } }
    case 'change_fraction':
      return withRoutine(system, { volume_L: Number(value) * waterVolume(file) })
    case 'change_volume_L':
      return withRoutine(system, { volume_L: Number(value) })
    case 'change_every_days':
      return withRoutine(system, { every_days: Number(value) })
    case 'feed_factor':
      return {
        ...system,
        feeds: system.feeds.map((feed) => ({ ...feed, g_per_day: feed.g_per_day * Number(value) })),
      }
    default:
      if (systemParts.includes(key)) return { ...system, [key]: value } as CaseSystem
      throw new CannotAnswer(`variant: ${key} is not a part of the system`)
  }
}

function withRoutine(system: CaseSystem, changed: object): CaseSystem {
  return {
    ...system,
    equipment: system.equipment.map((item) =>
      item.kind === 'water change' ? { ...item, ...changed } : item,
    ),
  }
}
