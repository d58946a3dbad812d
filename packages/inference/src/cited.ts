import { source } from '@holdfast/facts'

/** A source as people cite it. */
export function cited(key: string): string {
  const { authors, year } = source(key)
  return year === null ? authors : `${authors} ${year}`
}
