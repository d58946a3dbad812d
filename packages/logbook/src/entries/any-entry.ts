import { type Entry, envelope } from './entry.ts'
import { kinds } from './index.ts'
import { z } from './schema.ts'

/**
 * An entry of any kind at its newest version, for documents that tell others its form. What comes in
 * is read with `readEntry`, which also takes the older versions and has the words for what is wrong.
 */
export const anyEntry = z.union(
  kinds.map(({ name, v, body }) =>
    z.looseObject({ ...envelope.shape, kind: z.literal(name), v: z.literal(v), body }),
  ),
  // The compiler cannot follow the list into the union that `Entry` is made of.
) as unknown as z.ZodMiniType<Entry>
