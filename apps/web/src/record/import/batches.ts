import type { Entry } from '@holdfast/logbook'

/**
 * Characters of one sending: even at three bytes each they are well within the 8 MB that the API takes, and
 * of a long sheet the page tells every second how far it is.
 */
const atMost = 400_000

/** The entries in the parts in which they are sent, in their order. */
export function batchesOf(entries: readonly Entry[], characters = atMost): readonly (readonly Entry[])[] {
  const batches: Entry[][] = []
  let room = 0
  for (const entry of entries) {
    const size = JSON.stringify(entry).length
    const last = batches.at(-1)
    if (last === undefined || size > room) {
      batches.push([entry])
      room = characters - size
    } else {
      last.push(entry)
      room -= size
    }
  }
  return batches
}
