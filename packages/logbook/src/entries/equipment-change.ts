import { asTyped, kind } from './kind.ts'
import { z } from './schema.ts'

/** From this day on the equipment named runs with the values named in `changes`. */
export const equipmentChange = kind({
  name: 'equipment-change',
  title: 'Change of equipment',
  v: 1,
  body: { equipment: z.string().min(1), changes: z.record(z.string(), z.unknown()), text: asTyped },
})
