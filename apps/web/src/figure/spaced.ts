/** Keys of the catalogue as people read them: hair_green is hair green. */
export const spaced = (key: string) => key.replaceAll('_', ' ')
