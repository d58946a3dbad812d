import { asTyped, count, kind, name } from './kind.ts'
import { z } from './schema.ts'

/** A picture or a file, kept by its content beside the log; `sha256` finds it there. */
export const attachment = kind({
  name: 'attachment',
  title: 'Picture or file',
  v: 1,
  body: {
    /** Of the bytes, 64 digits of hexadecimal in small letters. */
    sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
    /** Such as image/jpeg. */
    mediaType: name,
    name,
    bytes: z.exactOptional(count),
    text: z.exactOptional(asTyped),
  },
  says: ({ name, text }) => (text === undefined || text.trim() === '' ? name : `${text} (${name})`),
})
