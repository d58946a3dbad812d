/** The views of the record, by their names in the address; the first is shown where none is named. */
export const views = {
  log: 'Log',
  letter: 'Letter',
  import: 'Import',
  sums: 'Sums',
  facts: 'Facts',
  ways: 'Units',
  copies: 'Copies',
} as const

export type View = keyof typeof views

export const viewNames = Object.keys(views) as readonly View[]
