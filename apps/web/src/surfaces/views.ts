/** The views of the surfaces, by their names in the address; the first is shown where none is named. */
export const views = {
  reach: 'What grows, who eats it',
  ladder: 'What to do',
  crew: 'Who should live here',
  identify: 'Name a growth',
} as const

export type View = keyof typeof views

export const viewNames = Object.keys(views) as readonly View[]
