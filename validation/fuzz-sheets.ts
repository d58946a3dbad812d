import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readSheet, type Sheet } from '@holdfast/logbook'
import Papa from 'papaparse'
import type { Check } from './check.ts'
import { drawsOf, mutatedText, mutatedWorkbook } from './imports/mutate.ts'

// Seen from dist, where this program is built to, and from its source alike.
const own = join(dirname(fileURLToPath(import.meta.url)), '..', 'validation', 'spreadsheets')

interface Source {
  readonly name: string
  readonly bytes: Uint8Array
}

/** Sheets of known truth, from which others are made. */
export function sheetsToMutate(): readonly Source[] {
  return [own, join(own, 'more')].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => /\.(?:csv|tsv|txt|xlsx)$/.test(name))
      .sort()
      .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(folder, name))) })),
  )
}

/** What went wrong with one mutated sheet; undefined where nothing was lost. */
export function lossOf({ name, bytes }: Source, seed: number): string | undefined {
  const draw = drawsOf(seed)
  const isWorkbook = name.endsWith('.xlsx')
  const text = isWorkbook ? '' : mutatedText(new TextDecoder(encodingOf(bytes)).decode(bytes), draw)
  const mutated = isWorkbook ? mutatedWorkbook(bytes, draw) : new TextEncoder().encode(text)
  try {
    const sheet = readSheet(mutated, name)
    const words = faultOf(sheet) ?? (isWorkbook ? undefined : lostFields(sheet, mutated))
    return words === undefined ? undefined : `${name}, seed ${seed}: ${words}`
  } catch (error) {
    return `${name}, seed ${seed}: ${error instanceof Error ? (error.stack ?? error.message) : error}`
  }
}

/** Fields with something in them, counted without the reader: as many must be held. */
function lostFields({ cells: { held }, delimiter, issues }: Sheet, bytes: Uint8Array): string | undefined {
  if (held === 0 && issues.length > 0) return undefined
  const { data } = Papa.parse<string[]>(new TextDecoder().decode(bytes).trimEnd(), { delimiter })
  const filled = data.flat().filter((field) => field.trim() !== '').length
  return filled === held ? undefined : `${filled} fields are filled, and ${held} were held`
}

function faultOf({ cells, odd, issues, readings, notes }: Sheet): string | undefined {
  const { held, read, waiting, listed } = cells
  if (held !== read + waiting + listed)
    return `${held} cells held something, ${read} read, ${waiting} wait, ${listed} listed`
  if (held === 0 && issues.length === 0) return 'nothing held, and nothing said'
  const named = new Set(odd.map(({ cell }) => cell))
  if (named.size < listed) return `${listed} cells are listed and ${named.size} are named`
  const taken = new Set([...readings, ...notes].map(({ cell }) => cell))
  if (taken.size > read) return `${taken.size} cells gave something, and ${read} are read`
  const figures = readings.flatMap(({ value, interval = [] }) => [value ?? 0, ...interval])
  return figures.every(Number.isFinite) ? undefined : 'a reading is no finite number'
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le'
  return 'utf-8'
}

/** Mutated sheets: none brings the reader down, and none of their cells is lost. */
export function fuzzSheets({ full }: { readonly full: boolean }): readonly Check[] {
  const count = full ? 100_000 : 3000
  const sources = sheetsToMutate()
  const losses: string[] = []
  for (let seed = 1; seed <= count && losses.length < 5; seed++) {
    const source = sources[seed % sources.length]
    const loss = source && lossOf(source, seed)
    if (loss !== undefined) losses.push(loss)
  }
  const says = losses.length === 0 ? `${count} sheets, no crash and no cell lost` : losses.join('; ')
  return [{ name: 'mutated sheets', outcome: losses.length === 0 ? 'passed' : 'failed', says }]
}
