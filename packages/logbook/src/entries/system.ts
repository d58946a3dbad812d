import { kind } from './kind.ts'
import { z } from './schema.ts'
import { systemDescription } from './system-description.ts'

/**
 * The description of the system from a day on: a change in the tank, or a mend of what was said
 * before. `document` is what the keeper wrote, `system` what was understood. It is made of a system
 * file (`readSystemFile`), which has more in it than blanks can hold.
 */
export const system = kind({
  name: 'system',
  title: 'Description of the system',
  v: 1,
  body: {
    tells: z.enum(['change', 'mend']),
    document: z.record(z.string(), z.unknown()),
    system: systemDescription,
  },
  says: ({ tells }) => (tells === 'mend' ? 'Description of the system, mended' : 'Description of the system'),
  settles: ({ tells }) => tells,
})
