import { asTyped, kind, name, typedTexts } from './kind.ts'
import { inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** From this day on the equipment named runs with the values named in `changes`. */
export const equipmentChange = kind({
  name: 'equipment-change',
  title: 'Change of equipment',
  v: 1,
  body: { equipment: name, changes: z.record(z.string(), z.unknown()), text: asTyped, typed: typedTexts },
  says: (body) => inWordsOf(body, `Change of ${body.equipment}`),
})
