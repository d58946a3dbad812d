import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Answers, readSheet, type Sheet, type SheetQuestion, type SheetReading } from '@holdfast/logbook'

/** What a careful person takes from a sheet; the keys are those of the truth files. */
interface Truth {
  readonly file: string
  readonly readings: readonly TrueReading[]
  readonly ambiguous: readonly { readonly id: string; readonly where: string; readonly assumed: string }[]
  readonly odd_cells: readonly { readonly cell: string; readonly as_written: string }[]
}

interface TrueReading {
  readonly date: string
  readonly time?: string
  readonly quantity: string
  readonly value: number | string | null
  readonly below_detection: boolean
  readonly cell: string
  readonly event?: {
    readonly kind: string
    readonly volume_L?: number
    readonly mass_g?: number
    readonly animals_added?: number
  }
}

/** How one sheet compares with its truth; no difference means it passes. */
export interface SheetCheck {
  readonly file: string
  readonly readings: number
  readonly notes: number
  readonly differences: readonly string[]
}

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

/** What the program prints, and its exit code. */
export function sheetReport(folder: string): { readonly lines: readonly string[]; readonly exitCode: 0 | 1 } {
  const checks = checkSheets(folder)
  const failed = checks.filter(({ differences }) => differences.length > 0)
  const passed = checks.length - failed.length
  const lines = failed.flatMap(({ file, differences }) =>
    differences.map((difference) => `FAILED  ${file}: ${difference}`),
  )
  return {
    lines: [...lines, `${passed} passed, ${failed.length} failed`],
    exitCode: failed.length > 0 || passed === 0 ? 1 : 0,
  }
}

/** Compares every sheet of text in a folder that has a truth file beside it. */
export function checkSheets(folder: string): readonly SheetCheck[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.truth.json'))
    .map((name): Truth => JSON.parse(readFileSync(join(folder, name), 'utf8')))
    .filter((truth) => /\.(csv|tsv|txt)$/.test(truth.file))
    .map((truth) => checkSheet(readFileSync(join(folder, truth.file)), truth))
}

function checkSheet(bytes: Uint8Array, truth: Truth): SheetCheck {
  const first = readSheet(bytes, truth.file)
  const sheet = answered(bytes, truth, first)
  const differences = [
    ...sheet.issues.map((issue) => `issue ${issue.code}`),
    ...questionDifferences(first.questions, truth),
    ...readingDifferences(sheet, truth),
    ...noteDifferences(sheet, truth),
    ...oddDifferences(sheet, truth),
  ]
  return { file: truth.file, readings: sheet.readings.length, notes: sheet.notes.length, differences }
}

const topicOf = (id: string): string => id.replaceAll('_', '-')

/** Answers each question as the truth assumes, until none is left that the truth answers. */
function answered(bytes: Uint8Array, truth: Truth, first: Sheet): Sheet {
  const answers: Record<string, string> = {}
  let sheet = first
  for (let round = 0; round < 3; round++) {
    for (const question of sheet.questions) {
      const assumed = truth.ambiguous.find((one) => topicOf(one.id) === question.topic)?.assumed
      const option = question.options.find((one) => one === assumed)
      if (option !== undefined) answers[question.id] = option
    }
    sheet = readSheet(bytes, truth.file, answers satisfies Answers)
  }
  return sheet
}

function questionDifferences(asked: readonly SheetQuestion[], truth: Truth): string[] {
  const topics = new Set<string>(asked.map((question) => question.topic))
  const expected = new Set(truth.ambiguous.map((one) => topicOf(one.id)))
  // A zero asks the limit of the kit; the truth names it among the odd cells.
  if (truth.odd_cells.some((odd) => odd.as_written === '0' || odd.as_written === 'ND')) expected.add('limit')
  return [
    ...[...expected].filter((topic) => !topics.has(topic)).map((topic) => `not asked: ${topic}`),
    ...[...topics].filter((topic) => !expected.has(topic)).map((topic) => `asked needlessly: ${topic}`),
  ]
}

function readingDifferences(sheet: Sheet, truth: Truth): string[] {
  const left = new Map(
    sheet.readings.map((reading) => [`${reading.cell} ${quantityKeys[reading.quantity]}`, reading]),
  )
  const differences: string[] = []
  for (const expected of truth.readings.filter((one) => one.quantity !== 'note')) {
    const key = `${expected.cell} ${expected.quantity}`
    const reading = left.get(key)
    left.delete(key)
    if (reading === undefined) differences.push(`missing: ${key}`)
    else if (!same(reading, expected)) {
      differences.push(
        `${key}: ${reading.date} ${reading.value} instead of ${expected.date} ${expected.value}`,
      )
    }
  }
  return [...differences, ...[...left.keys()].map((key) => `too much: ${key}`)]
}

function same(reading: SheetReading, expected: TrueReading): boolean {
  if (reading.date !== expected.date || reading.time !== expected.time) return false
  if (reading.belowDetection !== expected.below_detection) return false
  if (reading.value === null || typeof expected.value !== 'number') return reading.value === expected.value
  const tolerance =
    reading.quantity === 'salinity' ? salinityTolerance : relativeTolerance * Math.abs(expected.value)
  return Math.abs(reading.value - expected.value) <= tolerance
}

function noteDifferences(sheet: Sheet, truth: Truth): string[] {
  const left = new Map(sheet.notes.map((note) => [note.cell, note]))
  const differences: string[] = []
  for (const expected of truth.readings.filter((one) => one.quantity === 'note')) {
    const note = left.get(expected.cell)
    left.delete(expected.cell)
    if (note === undefined) {
      differences.push(`missing: note ${expected.cell}`)
      continue
    }
    if (note.text !== expected.value || note.date !== expected.date)
      differences.push(`note ${expected.cell} differs`)
    const [changed, placed, added] = [
      amounts(note.events, 'volume_L'),
      amounts(note.events, 'mass_g'),
      amounts(note.events, 'count'),
    ]
    const { volume_L, mass_g, animals_added } = expected.event ?? {}
    if (!near(changed, volume_L) || !near(placed, mass_g) || !near(added, animals_added)) {
      differences.push(`note ${expected.cell}: events ${JSON.stringify(note.events)}`)
    }
  }
  return [...differences, ...[...left.keys()].map((cell) => `too much: note ${cell}`)]
}

function amounts(events: readonly object[], key: string): readonly number[] {
  return events.flatMap((event) =>
    Object.entries(event)
      .filter(([name]) => name === key)
      .map(([, value]) => Number(value)),
  )
}

function near(found: readonly number[], expected: number | undefined): boolean {
  if (expected === undefined) return found.length === 0
  return found.length === 1 && Math.abs(found[0] - expected) <= relativeTolerance * expected
}

function oddDifferences(sheet: Sheet, truth: Truth): string[] {
  // "ND" and "0" are readings below detection here, with the limit asked, and not odd.
  const listed = new Set(
    [...sheet.odd, ...sheet.readings.filter((reading) => reading.belowDetection)].map((one) => one.cell),
  )
  return truth.odd_cells.filter((odd) => !listed.has(odd.cell)).map((odd) => `not listed as odd: ${odd.cell}`)
}
