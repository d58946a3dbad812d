/** What the address of the page says; every view can be shared as a link. */
export const fromAddress = (name: string) => new URLSearchParams(location.search).get(name)

export function intoAddress(values: Readonly<Record<string, string | undefined>>): void {
  const search = new URLSearchParams(location.search)
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) search.delete(name)
    else search.set(name, value)
  }
  history.replaceState(null, '', `${location.pathname}${search.size > 0 ? `?${search}` : ''}${location.hash}`)
}
