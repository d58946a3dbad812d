import { asTyped, kind, share, typedTexts } from './kind.ts'
import { inWordsOf, percent, shareTyped } from './says.ts'
import { z } from './schema.ts'

/** Settled waste siphoned off floor and sand; `part` of them, all of them where it is left out. */
export const siphoning = kind({
  name: 'siphoning',
  title: 'Floor siphoned',
  v: 1,
  body: {
    part: z.exactOptional(share),
    text: asTyped,
    typed: typedTexts,
  },
  blanks: () => [
    {
      name: 'part',
      label: 'Part of the floor',
      holds: 'share',
      required: false,
      hint: 'Of floor and sand, such as 30 %; left out, all of it',
    },
  ],
  understand: (filled) => ({
    ...filled.numberAs('part', 'part'),
    text: filled.typed.part ?? '',
    typed: filled.typed,
  }),
  fills: ({ part }) => (part === undefined ? {} : { part: shareTyped(part) }),
  says: (body) => {
    const { part } = body
    return inWordsOf(body, part === undefined ? 'Floor siphoned' : `${percent(part)} of the floor siphoned`)
  },
})
