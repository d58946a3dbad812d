import { kind, name } from './kind.ts'
import { z } from './schema.ts'

/** Undo: takes back one entry, or every entry of one batch. */
export const retraction = kind({
  name: 'retraction',
  title: 'Taken back',
  v: 1,
  body: { of: z.enum(['entry', 'batch']), id: name },
  says: ({ of }) => (of === 'batch' ? 'An import taken back' : 'An entry taken back'),
})
