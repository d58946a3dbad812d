/** Where something stands in a document: keys and places in lists. */
export type Path = readonly (string | number)[]

/** What stands at a place; undefined where there is nothing. */
export function valueAt(document: unknown, path: Path): unknown {
  let value = document
  for (const key of path)
    value = typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined
  return value
}

/** The document with another value at a place; undefined takes out what stands there. */
export function withValue<Document>(document: Document, path: Path, value: unknown): Document {
  const [key, ...rest] = path
  if (key === undefined) return value as Document
  const empty = typeof rest[0] === 'number' ? [] : {}
  const next = rest.length === 0 ? value : withValue(valueAt(document, [key]) ?? empty, rest, value)
  if (Array.isArray(document)) {
    const list = document.flatMap((one, place) => (place !== key ? [one] : next === undefined ? [] : [next]))
    return (key === document.length && next !== undefined ? [...list, next] : list) as Document
  }
  const others = Object.entries(document as object).filter(([name]) => name !== key)
  const known = Object.keys(document as object).includes(String(key))
  const entries = known
    ? Object.entries(document as object).map(([name, one]) => [name, name === key ? next : one] as const)
    : [...others, [key, next] as const]
  return Object.fromEntries(entries.filter(([, one]) => one !== undefined)) as Document
}

/** As issues of a system file name a place, lists counted from 1: "surfaces 2, area". */
export const placeOf = (path: Path): string =>
  path.map((key, at) => (typeof key === 'number' ? ` ${key + 1}` : `${at === 0 ? '' : ', '}${key}`)).join('')

/** The place that `placeOf` names so. */
export const pathOf = (place: string): Path =>
  place.split(', ').flatMap((part) => {
    const [, key = part, number] = /^(.+?)(?: (\d+))?$/.exec(part) ?? []
    return number === undefined ? [key] : [key, Number(number) - 1]
  })
