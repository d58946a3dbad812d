/** What the address of the page says; every view can be shared as a link. */
export const fromAddress = (name: string) => new URLSearchParams(location.search).get(name)

/** The places of the page by the questions they answer, each with its title and the key that leads there. */
export const places = {
  today: { title: 'Today', key: 't' },
  water: { title: 'Water', key: 'w' },
  surfaces: { title: 'Surfaces', key: 's' },
  record: { title: 'Record', key: 'r' },
} as const

export type Place = keyof typeof places

export const placeNames = Object.keys(places) as readonly Place[]

export const placeInAddress = (): Place =>
  placeNames.find((place) => place === fromAddress('place')) ?? 'today'

/** The address of a place, for the same system where none is named, with what else it shall show. */
export function addressOf(place: Place, view?: string, more: Readonly<Record<string, string>> = {}): string {
  const system = fromAddress('system')
  const search = new URLSearchParams({
    ...(place === 'today' ? {} : { place }),
    ...(view === undefined ? {} : { view }),
    ...(system === null ? {} : { system }),
    ...more,
  })
  return search.size > 0 ? `?${search}` : location.pathname
}

/**
 * Puts values into the address; undefined takes one out. The page stays as it is.
 *
 * @param as  'a step' where the browser's Back shall lead to what was before
 */
export function intoAddress(
  values: Readonly<Record<string, string | undefined>>,
  as: 'a step' | 'the same' = 'the same',
): void {
  const search = new URLSearchParams(location.search)
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) search.delete(name)
    else search.set(name, value)
  }
  const address = `${location.pathname}${search.size > 0 ? `?${search}` : ''}${location.hash}`
  if (as === 'a step') history.pushState(null, '', address)
  else history.replaceState(null, '', address)
}
