import { unzipSync } from 'fflate'

import { limits, tooLarge, Unreadable } from './book.ts'

/** Packs no tighter than this in an honest workbook: XML of equal rows comes to some 100 to 1. */
const mostPacked = 400

/**
 * The parts of a workbook by their path, only those that are asked for. What each says of its size is
 * counted before it is unpacked, and what it is found to be is held against that: a part that unpacks to
 * more than it said is refused, and none is unpacked beyond it.
 *
 * @throws Unreadable
 */
export function unpack(
  bytes: Uint8Array,
  wanted: (path: string) => boolean,
): ReadonlyMap<string, Uint8Array> {
  let [entries, declared] = [0, 0]
  const sizes = new Map<string, number>()
  const parts = openly(() =>
    unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        entries++
        if (entries > limits.entries) throw tooLarge('parts of the workbook', limits.entries)
        if (!wanted(name)) return false
        declared += originalSize
        if (declared > limits.unpackedBytes) throw tooLarge('bytes unpacked', limits.unpackedBytes)
        if (originalSize > 1_000_000 && originalSize > size * mostPacked)
          throw new Unreadable({ code: 'broken-workbook', why: `"${name}" is packed as no workbook is` })
        if (sizes.has(name))
          throw new Unreadable({ code: 'broken-workbook', why: `"${name}" is there twice` })
        sizes.set(name, originalSize)
        return true
      },
    }),
  )
  for (const [name, part] of Object.entries(parts)) {
    // the library unpacks into room of the size that was said: a part that says too little is cut off
    if (part.length !== sizes.get(name))
      throw new Unreadable({ code: 'broken-workbook', why: `"${name}" is not of the size that it says` })
  }
  return new Map(Object.entries(parts))
}

function openly<T>(act: () => T): T {
  try {
    return act()
  } catch (error) {
    if (error instanceof Unreadable) throw error
    const why = error instanceof Error ? error.message : 'the archive cannot be read'
    throw new Unreadable({ code: 'broken-workbook', why })
  }
}
