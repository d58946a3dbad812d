/** What the address of the page says; every view can be shared as a link. */
export const fromAddress = (name: string) => new URLSearchParams(location.search).get(name)

/** The places of the page, each with its title. */
export const places = { water: 'Water', record: 'Record' } as const

export type Place = keyof typeof places

export const placeInAddress = (): Place => (fromAddress('place') === 'record' ? 'record' : 'water')

/** The address of a place, for the same system, with what else it shall show. */
export function addressOf(place: Place, view?: string, more: Readonly<Record<string, string>> = {}): string {
  const system = fromAddress('system')
  const search = new URLSearchParams({
    ...(place === 'record' ? { place } : {}),
    ...(view === undefined ? {} : { view }),
    ...(system === null ? {} : { system }),
    ...more,
  })
  return search.size > 0 ? `?${search}` : location.pathname
}

/** Puts values into the address; undefined takes one out. The page stays as it is. */
export function intoAddress(values: Readonly<Record<string, string | undefined>>): void {
  const search = new URLSearchParams(location.search)
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) search.delete(name)
    else search.set(name, value)
  }
  history.replaceState(null, '', `${location.pathname}${search.size > 0 ? `?${search}` : ''}${location.hash}`)
}
