/**
 * So many animals as one says it; what stands behind a comma or in brackets stays as it is.
 *
 * @example counted(2, 'bicolor blenny') // '2 bicolor blennies'
 */
export const counted = (count: number, tradeName: string): string =>
  `${count} ${count === 1 ? tradeName : several(tradeName)}`

/** The same where it is not said how many. */
export function several(tradeName: string): string {
  const [, name = tradeName, more = ''] = /^(.*?)(,.*| \([^)]*\))?$/.exec(tradeName) ?? []
  return `${plural(name)}${more}`
}

function plural(name: string): string {
  // A fish and fish, and names that are plurals already.
  if (/(fish|s)$/.test(name)) return name
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`
  return /(x|sh|ch)$/.test(name) ? `${name}es` : `${name}s`
}
