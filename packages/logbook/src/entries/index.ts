import { animals } from './animals.ts'
import { animalsMoved } from './animals-moved.ts'
import { attachment } from './attachment.ts'
import { crewPlan } from './crew-plan.ts'
import { dose } from './dose.ts'
import { equipmentChange } from './equipment-change.ts'
import { factOverride } from './fact-override.ts'
import { feeding } from './feeding.ts'
import { handRemoval } from './hand-removal.ts'
import { harvest } from './harvest.ts'
import type { Kind } from './kind.ts'
import { lightChange } from './light-change.ts'
import { media } from './media.ts'
import { note } from './note.ts'
import { observation } from './observation.ts'
import { outbreak } from './outbreak.ts'
import { reading } from './reading.ts'
import { retraction } from './retraction.ts'
import { rockAdded } from './rock-added.ts'
import { shownOutlook } from './shown-outlook.ts'
import { siphoning } from './siphoning.ts'
import { survey } from './survey.ts'
import { system } from './system.ts'
import { waterChange } from './water-change.ts'

/** Every kind of entry, one line each; ids are never reused. */
export const kinds = [
  reading,
  feeding,
  waterChange,
  dose,
  media,
  harvest,
  siphoning,
  handRemoval,
  survey,
  observation,
  outbreak,
  animals,
  animalsMoved,
  equipmentChange,
  lightChange,
  rockAdded,
  note,
  attachment,
  system,
  factOverride,
  shownOutlook,
  crewPlan,
  retraction,
] as const

const byName = new Map<string, Kind>(kinds.map((kind) => [kind.name, kind]))

/** @throws Error for a name that is no kind: entries that were read have one */
export function kindNamed(name: string): Kind {
  const kind = byName.get(name)
  if (kind === undefined) throw new Error(`there is no kind of entry "${name}"`)
  return kind
}
