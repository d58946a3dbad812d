import { fromAddress, intoAddress } from '../shell/address.ts'

/** The figure that the address names, until a line that holds it has taken it: the first of several does. */
let waiting = typeof location === 'undefined' ? undefined : (fromAddress('why') ?? undefined)
let named = waiting

/** Puts a figure into the address, a step on from the page without it. */
export function nameFigure(id: string): void {
  named = id
  intoAddress({ why: id }, 'a step')
}

/** Takes a figure out of the address, if it stands there. */
export function unnameFigure(id: string): void {
  if (named !== id) return
  named = undefined
  intoAddress({ why: undefined })
}

/** The one of these figures that the address names and no line has opened yet. */
export function takeNamed(ids: readonly string[]): string | undefined {
  const found = ids.find((id) => id === waiting)
  if (found !== undefined) waiting = undefined
  return found
}

/** Calls back when Back or Forward leads to another figure, or to none. @returns what ends it */
export function onNamed(hear: () => void): () => void {
  lines.add(hear)
  return () => lines.delete(hear)
}

const lines = new Set<() => void>()

if (typeof addEventListener === 'function')
  addEventListener('popstate', () => {
    const now = fromAddress('why') ?? undefined
    if (now === named) return
    named = now
    waiting = now
    for (const hear of lines) hear()
  })
