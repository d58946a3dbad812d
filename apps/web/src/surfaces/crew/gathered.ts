/**
 * Statements with those of whom each holds, those of the same once together; what holds of most stands first.
 *
 * @param all  whom it is about, with what is said of it
 */
export function gathered(
  all: readonly { readonly name: string; readonly says: readonly string[] }[],
): readonly { readonly names: readonly string[]; readonly says: readonly string[] }[] {
  const namesOf = new Map<string, readonly string[]>()
  for (const { name, says } of all)
    for (const one of new Set(says)) namesOf.set(one, [...(namesOf.get(one) ?? []), name])
  const groups = new Map<string, { readonly names: readonly string[]; readonly says: readonly string[] }>()
  for (const [one, names] of namesOf) {
    const key = names.join()
    groups.set(key, { names, says: [...(groups.get(key)?.says ?? []), one] })
  }
  return [...groups.values()].sort((a, b) => b.names.length - a.names.length)
}
