import type { Sheet, SheetNote, SheetQuestion, SheetReading } from '@holdfast/logbook'

import { meets, mustWait } from './answers.ts'
import { regionOf } from './place.ts'
import type { TrueEvent, TrueReading, Truth } from './truth.ts'

const quantityKeys: Readonly<Record<SheetReading['quantity'], string>> = {
  nitrate: 'nitrate_NO3_mg_L',
  phosphate: 'phosphate_PO4_mg_L',
  ammonia: 'ammonia_total_as_N_mg_L',
  nitrite: 'nitrite_NO2_mg_L',
  alkalinity: 'alkalinity_meq_L',
  calcium: 'calcium_mg_L',
  magnesium: 'magnesium_mg_L',
  salinity: 'salinity_psu',
  temperature: 'temperature_C',
  pH: 'pH',
}

const relativeTolerance = 0.005
const salinityTolerance = 0.1

/** Every question of the truth must have been asked, cells waiting for it; and nothing must wait needlessly. */
export function questionDifferences(asked: readonly SheetQuestion[], truth: Truth): readonly string[] {
  const missing = truth.ambiguous.flatMap((theirs) => {
    const met = asked.filter((ours) => meets(ours, theirs))
    if (met.length === 0) return [`not asked: ${theirs.id} (${theirs.where})`]
    return mustWait(theirs) && met.every(({ waiting }) => waiting === 0)
      ? [`asked and taken all the same: ${theirs.id}`]
      : []
  })
  const odd = truth.odd_cells.map(({ cell }) => regionOf(cell))
  const mended = truth.readings.filter(({ date_as_written }) => date_as_written !== undefined)
  const needless = asked.filter((ours) => {
    if (ours.waiting === 0 || truth.ambiguous.some((theirs) => meets(ours, theirs))) return false
    const isOdd = odd.some((region) => ours.cells.some(region))
    return !isOdd && !mended.some(({ cell }) => ours.cells.includes(cell))
  })
  return [...missing, ...needless.map(({ id, where }) => `asked needlessly: ${id} (${where})`)]
}

export function readingDifferences(sheet: Sheet, truth: Truth): readonly string[] {
  const left = new Map(
    sheet.readings.map((reading) => [keyOf(reading.cell, quantityKeys[reading.quantity]), reading]),
  )
  const differences: string[] = []
  for (const expected of truth.readings.filter((one) => one.quantity !== 'note')) {
    const key = keyOf(expected.cell, expected.quantity)
    const reading = left.get(key)
    left.delete(key)
    if (reading === undefined) differences.push(`missing: ${key}`)
    else differences.push(...valueDifferences(reading, expected).map((words) => `${key}: ${words}`))
  }
  return [...differences, ...[...left.keys()].map((key) => `too much: ${key}`)]
}

const keyOf = (cell: string, quantity: string): string => `${cell} ${quantity}`

function valueDifferences(reading: SheetReading, expected: TrueReading): readonly string[] {
  const words: string[] = []
  const compare = (what: string, found: unknown, wanted: unknown): void => {
    if (found !== wanted) words.push(`${what} ${found} instead of ${wanted}`)
  }
  compare('date', reading.date, expected.date)
  compare('time', reading.time, expected.time)
  compare('half of the day', reading.half, expected.half_day)
  compare('below detection', reading.belowDetection, expected.below_detection)
  compare('above range', reading.aboveRange ?? false, expected.above_range ?? false)
  compare('approximate', reading.approximate ?? false, expected.approximate ?? false)
  if (expected.system !== undefined) compare('tank', reading.tank, expected.system)
  if (expected.suspect) compare('suspect', reading.suspect ?? false, true)
  if (expected.zero_as_written) compare('zero as written', reading.zeroAsWritten ?? false, true)
  if (expected.date_as_written !== undefined)
    compare('date as written', reading.dateAsWritten, expected.date_as_written)
  const quantity = reading.quantity
  const number = (
    what: string,
    found: number | null | undefined,
    wanted: number | null | undefined,
  ): void => {
    if (wanted !== undefined && !near(quantity, found, wanted))
      words.push(`${what} ${found} instead of ${wanted}`)
  }
  number('value', reading.value, typeof expected.value === 'string' ? null : expected.value)
  number('likely', reading.likely, expected.likely)
  number('value as written', reading.valueAsWritten, expected.value_if_as_written)
  number('first value', reading.firstValue, expected.first_value)
  number('low', reading.interval?.[0], expected.interval?.[0])
  number('high', reading.interval?.[1], expected.interval?.[1])
  if (expected.interval === undefined && reading.interval !== undefined)
    words.push('a span where a figure stands')
  if (!sameUnit(reading.unit, expected.unit_as_written))
    compare('unit', reading.unit, expected.unit_as_written)
  return words
}

function near(
  quantity: SheetReading['quantity'],
  found: number | null | undefined,
  wanted: number | null,
): boolean {
  if (found === undefined || found === null || wanted === null) return found === wanted
  const tolerance = quantity === 'salinity' ? salinityTolerance : relativeTolerance * Math.abs(wanted)
  return Math.abs(found - wanted) <= tolerance
}

/** The unit as written, in any spelling, with or without the form and what the truth adds in words. */
function sameUnit(found: string | undefined, wanted: string | null): boolean {
  const spelled = (unit: string): string =>
    unit
      .toLowerCase()
      .replace(/\(.*?\)|\bas\b|\bals\b/g, '')
      .replace(/[\s°.]/g, '')
  const [ours, theirs] = [spelled(found ?? ''), spelled(wanted ?? '')]
  if (theirs === '' || ours === '') return ours === theirs
  return (
    ours === theirs ||
    ours.startsWith(theirs) ||
    theirs.startsWith(ours) ||
    ours.endsWith(theirs) ||
    theirs.endsWith(ours)
  )
}

export function noteDifferences(sheet: Sheet, truth: Truth): readonly string[] {
  const left = new Map(sheet.notes.map((note) => [note.cell, note]))
  const differences: string[] = []
  for (const expected of truth.readings.filter((one) => one.quantity === 'note')) {
    const note = left.get(expected.cell)
    left.delete(expected.cell)
    if (note === undefined) {
      differences.push(`missing: note ${expected.cell}`)
      continue
    }
    if (!sameText(note.text, String(expected.value)) || note.date !== expected.date)
      differences.push(
        `note ${expected.cell}: "${note.text}" of ${note.date} instead of "${expected.value}" of ${expected.date}`,
      )
    if (!sameEvents(note, expected.event ?? {}))
      differences.push(
        `note ${expected.cell}: says ${JSON.stringify(note.events)} instead of ${JSON.stringify(expected.event)}`,
      )
  }
  const listed = new Set(truth.odd_cells.flatMap(({ cell }) => [...left.keys()].filter(regionOf(cell))))
  return [
    ...differences,
    ...[...left.keys()].filter((cell) => !listed.has(cell)).map((cell) => `too much: note ${cell}`),
  ]
}

function sameText(found: string, wanted: string): boolean {
  const [ours, theirs] = [found, wanted].map((text) => text.replace(/\s+/g, ' ').trim().toLowerCase())
  return (
    ours === theirs ||
    (ours !== undefined &&
      theirs !== undefined &&
      theirs !== '' &&
      (ours.includes(theirs) || theirs.includes(ours)))
  )
}

function sameEvents({ events }: SheetNote, wanted: TrueEvent): boolean {
  const amounts = (key: string): readonly number[] =>
    events.flatMap((event) =>
      Object.entries(event).flatMap(([name, value]) => (name === key ? [Number(value)] : [])),
    )
  const same = (found: readonly number[], expected: number | undefined): boolean =>
    expected === undefined
      ? found.length === 0
      : found.length === 1 && Math.abs((found[0] ?? 0) - expected) <= relativeTolerance * expected
  const has = (kind: string): boolean => events.some((event) => event.kind === kind)
  return (
    same(amounts('volume_L'), wanted.volume_L) &&
    same(amounts('mass_g'), wanted.mass_g) &&
    same(amounts('count'), wanted.animals_added) &&
    same(amounts('hours'), wanted.hours) &&
    (!/kit/.test(wanted.kind ?? '') || has('kit-change')) &&
    (!/unit/.test(wanted.kind ?? '') || has('unit-change'))
  )
}

/** Each odd cell of the truth must be listed; "ND" and "0" may be readings below detection instead. */
export function oddDifferences(sheet: Sheet, truth: Truth): readonly string[] {
  const below = sheet.readings.filter((reading) => reading.belowDetection)
  const listed = [...sheet.odd, ...below].map(({ cell }) => cell)
  return truth.odd_cells.flatMap(({ cell }) => {
    const region = regionOf(cell)
    return listed.some(region) ? [] : [`not listed as odd: ${cell}`]
  })
}

/** No cell may be lost: what was read, what waits and what is listed is what held something. */
export function lossDifferences({ cells: { held, read, waiting, listed } }: Sheet): readonly string[] {
  const isWhole = held === read + waiting + listed && held > 0
  return isWhole
    ? []
    : [`${held} cells held something, ${read} were read, ${waiting} wait, ${listed} are listed`]
}
