import { Unreadable } from './book.ts'

interface Text {
  readonly text: string
  readonly encoding: string
}

const marks: readonly (readonly [string, string])[] = [
  ['\x89PNG', 'a PNG picture'],
  ['\xff\xd8\xff', 'a JPEG picture'],
  ['%PDF', 'a PDF document'],
  ['\xd0\xcf\x11\xe0', 'a workbook of the old kind (XLS)'],
  ['GIF8', 'a GIF picture'],
  ['\x1f\x8b', 'a packed file (GZIP)'],
  ['{\\rtf', 'a document (RTF)'],
]

/**
 * Text by byte order mark, else strict UTF-8, else UTF-16 by its zero bytes, else windows-1252 (which
 * holds Latin-1 as far as people write it).
 *
 * @throws Unreadable where the bytes are no text
 */
export function decode(bytes: Uint8Array): Text {
  const start = String.fromCharCode(...bytes.subarray(0, 8))
  const mark = marks.find(([magic]) => start.startsWith(magic))
  if (mark) throw new Unreadable({ code: 'not-text', looksLike: mark[1] })
  const found = withMark(bytes) ?? withoutMark(bytes)
  // Control characters other than tab and line ends do not occur in a sheet that a person wrote.
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  if (/[\0-\x08\x0b\x0e-\x1f]/.test(found.text)) throw new Unreadable({ code: 'not-text' })
  if (found.text.trim() === '') throw new Unreadable({ code: 'empty-file' })
  return found
}

function withMark(bytes: Uint8Array): Text | undefined {
  const [a, b, c] = bytes
  if (a === 0xef && b === 0xbb && c === 0xbf) return inEncoding(bytes, 'utf-8', 'UTF-8 with BOM')
  if (a === 0xff && b === 0xfe) return inEncoding(bytes, 'utf-16le', 'UTF-16 LE')
  if (a === 0xfe && b === 0xff) return inEncoding(bytes, 'utf-16be', 'UTF-16 BE')
  return undefined
}

function withoutMark(bytes: Uint8Array): Text {
  const sample = bytes.subarray(0, 2000)
  const zeros = (from: number): number =>
    sample.filter((byte, place) => place % 2 === from && byte === 0).length
  const [even, odd] = [zeros(0), zeros(1)]
  if (odd > sample.length / 4 && even < odd / 10) return inEncoding(bytes, 'utf-16le', 'UTF-16 LE')
  if (even > sample.length / 4 && odd < even / 10) return inEncoding(bytes, 'utf-16be', 'UTF-16 BE')
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' }
  } catch {
    return inEncoding(bytes, 'windows-1252', 'windows-1252')
  }
}

function inEncoding(bytes: Uint8Array, label: string, encoding: string): Text {
  return { text: new TextDecoder(label).decode(bytes), encoding }
}
