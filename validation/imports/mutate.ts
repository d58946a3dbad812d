import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'

/** Numbers from 0 up to a bound, the same for the same seed (mulberry32, public domain). */
export function drawsOf(seed: number): (below: number) => number {
  let state = seed >>> 0
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * below)
  }
}

/** What keepers and programs leave in a sheet, and what neither should. */
const scraps = [
  ...[
    '',
    '-',
    'n.d.',
    '<0.03',
    '>50',
    '5-10',
    '~2',
    '1,5',
    '1.310',
    '1e9',
    '-4',
    '0',
    'NaN',
    '=A1*2',
    '"',
    "'",
  ],
  ...[
    'Date',
    'NO3',
    'PO4 ppb',
    'mean',
    'Summe',
    'now as P',
    'new kit',
    'ND',
    'KH',
    '2062-01-01',
    '3/4/26',
    '31.02.2026',
  ],
  ...[
    '46032',
    '12:30',
    'am',
    'twelve',
    '5 ppm (redone: 4)',
    '\u0000',
    '\ufeff',
    '😀',
    'ß',
    '<a&b>',
    '9'.repeat(400),
  ],
  ...[
    'Nitrate (mg/L)',
    'Display',
    'changed 40 L',
    '10 gal water change',
    'between 3 and',
    '((((((',
    '°F',
    '1.026 SG',
  ],
]

type Draw = (below: number) => number
type Change = (text: string, draw: Draw) => string

const span = (text: string, draw: Draw): readonly [number, number] => {
  const from = draw(text.length + 1)
  return [from, Math.min(text.length, from + draw(12))]
}
const scrap = (draw: Draw): string => scraps[draw(scraps.length)] ?? ''

const changes: readonly Change[] = [
  (text, draw) => {
    const [from, to] = span(text, draw)
    return text.slice(0, from) + text.slice(to)
  },
  (text, draw) => {
    const [from] = span(text, draw)
    return text.slice(0, from) + scrap(draw) + text.slice(from)
  },
  (text, draw) => {
    const [from, to] = span(text, draw)
    return text.slice(0, from) + String.fromCharCode(draw(draw(2) === 0 ? 128 : 0xffff)) + text.slice(to)
  },
  (text, draw) =>
    lines(text, (rows) => [...rows.slice(draw(rows.length + 1)), ...rows.slice(0, draw(rows.length + 1))]),
  (text, draw) => lines(text, (rows) => rows.filter(() => draw(4) > 0)),
  (text, draw) => lines(text, (rows) => rows.flatMap((row) => (draw(6) === 0 ? [row, row] : [row]))),
  (text, draw) => fields(text, draw, (row) => row.map((field) => (draw(12) === 0 ? scrap(draw) : field))),
  (text, draw) => fields(text, draw, (row) => row.filter(() => draw(8) > 0)),
  (text, draw) => {
    const [a, b] = [scrap(draw), scrap(draw)]
    return a === '' ? text : text.replaceAll(a, b)
  },
  (text, draw) =>
    text.replaceAll([',', ';', '\t', '\n', '.'][draw(5)] ?? ',', [',', ';', '\t', ' ', '|'][draw(5)] ?? ''),
]

function lines(text: string, change: (rows: readonly string[]) => readonly string[]): string {
  return change(text.split('\n')).join('\n')
}

function fields(text: string, draw: Draw, change: (row: readonly string[]) => readonly string[]): string {
  const mark = [',', ';', '\t'].find((one) => text.includes(one)) ?? ','
  return lines(text, (rows) => rows.map((row) => (draw(3) === 0 ? change(row.split(mark)).join(mark) : row)))
}

/** A sheet of text, changed a few times. */
export function mutatedText(text: string, draw: Draw): string {
  let changed = text
  for (let count = 1 + draw(4); count > 0; count--)
    changed = changes[draw(changes.length)]?.(changed, draw) ?? changed
  return changed
}

/** A workbook of which the values in a part, or any letters of it, were changed. */
export function mutatedWorkbook(bytes: Uint8Array, draw: Draw): Uint8Array {
  const parts = unzipSync(bytes)
  const names = Object.keys(parts).filter(
    (name) => /sheet|workbook|styles/.test(name) && name.endsWith('.xml'),
  )
  const name = names[draw(names.length)]
  if (name === undefined) return bytes
  const xml = strFromU8(parts[name] ?? new Uint8Array())
  const inValues = xml.replace(/(<(?:v|t|f)>)([^<]*)/g, (whole, tag, value) =>
    draw(8) > 0
      ? whole
      : `${tag}${(draw(2) === 0 ? scrap(draw) : mutatedText(value, draw)).replace(/[<&\0]/g, '')}`,
  )
  const changed = draw(3) > 0 ? inValues : mutatedText(xml, draw)
  return zipSync({ ...parts, [name]: strToU8(changed) }, { level: 0 })
}
