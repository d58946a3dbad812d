import { asTyped, kind } from './kind.ts'

/** Words for the keeper's own use; no figure is made of them. */
export const note = kind({ name: 'note', title: 'Note', v: 1, body: { text: asTyped } })
