import { animals } from './animals.ts'
import { dose } from './dose.ts'
import { equipmentChange } from './equipment-change.ts'
import { feeding } from './feeding.ts'
import { handRemoval } from './hand-removal.ts'
import { media } from './media.ts'
import { note } from './note.ts'
import { reading } from './reading.ts'
import { retraction } from './retraction.ts'
import { survey } from './survey.ts'
import { system } from './system.ts'
import { waterChange } from './water-change.ts'

/** Every kind of entry, one line each; ids are never reused. */
export const kinds = [
  reading,
  waterChange,
  feeding,
  media,
  survey,
  handRemoval,
  animals,
  dose,
  equipmentChange,
  note,
  system,
  retraction,
] as const
