import { asTyped, kind } from './kind.ts'

/** Words for the keeper's own use; no figure is made of them. */
export const note = kind({
  name: 'note',
  title: 'Note',
  v: 1,
  body: { text: asTyped },
  blanks: () => [
    { name: 'text', label: 'Note', holds: 'words', required: true, hint: 'Anything worth keeping' },
  ],
  understand: (filled) => ({ text: filled.words('text') }),
  fills: ({ text }) => ({ text }),
  says: ({ text }) => text,
})
