import { dayInShort } from '../../ways/dates.ts'

/**
 * The name of an import as people read it: those that the program named say their day, and what tells two
 * of one day apart.
 *
 * @example importInWords('import-2026-03-02-a1b2c3') // 'the import of 2 Mar 2026 (a1b2c3)'
 */
export function importInWords(batch: string): string {
  const [, day, mark] = /^import-(\d{4}-\d{2}-\d{2})-(\w+)$/.exec(batch) ?? []
  if (day === undefined) return `the import “${batch}”`
  return `the import of ${dayInShort(day)} (${mark})`
}
