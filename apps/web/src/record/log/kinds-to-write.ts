import { blanksOf, type EntryKind, kinds } from '@holdfast/logbook'

/** Kinds that a person writes, by blanks or by choosing a file; the others the program writes by itself. */
export const kindsToWrite: readonly EntryKind[] = kinds
  .map(({ name }) => name)
  .filter((kind) => blanksOf(kind).length > 0 || kind === 'attachment')

export const titleOf = (kind: EntryKind): string => kinds.find(({ name }) => name === kind)?.title ?? kind
