import type { System } from '@holdfast/ecosystem'
import { type BodyOf, type JournalLine, readQuantities } from '@holdfast/logbook'
import { plain } from '../figure/numbers.ts'
import { meaningInList } from '../record/meaning.ts'
import { said } from '../record/said.ts'
import { amount } from '../ways/amounts.ts'

/** What the log says about today, in sentences. */
export interface State {
  readonly says: readonly string[]
  /** What the record lacks, and what would tell most. */
  readonly lacks: readonly string[]
}

/** Nitrate or phosphate as reefs of a kind are kept in, in the unit in which the log keeps them. */
export interface Kept {
  readonly quantity: 'nitrate' | 'phosphate'
  readonly low: number
  readonly high: number
}

export interface Asked {
  readonly system: System
  /** Readings, surveys and water changes, the latest first. */
  readonly lines: readonly JournalLine[]
  readonly bands: readonly Kept[]
  /** ISO date in the zone of the system. */
  readonly today: string
}

/** A reading older than this says little about today. */
const fresh_days = 14

/** The state of a system by its log's calendar. It asks nothing of the model. */
export function stateOf({ system, lines, bands, today }: Asked): State {
  const holding = lines.filter(({ state }) => state === 'holds')
  const readings = bands.map((band) => {
    const line = holding.find(({ entry }) => isReadingOf(entry, band.quantity))
    return { band, line, days: line === undefined ? undefined : daysSince(line.entry.at, today) }
  })
  const read = readings.flatMap(({ band, line, days }) =>
    line === undefined || days === undefined ? [] : [sentenceOf(line, band, days)],
  )
  const noReading = 'The log has no reading of nitrate or phosphate yet.'
  return {
    says: [...(read.length > 0 ? read : [noReading]), ...changeDue(system, holding, today)],
    lacks: [...test(readings), ...survey(system, holding, today)],
  }
}

const isReadingOf = ({ kind, body }: JournalLine['entry'], quantity: Kept['quantity']): boolean =>
  kind === 'reading' && (body as BodyOf<'reading'>).quantity === quantity

function sentenceOf(line: JournalLine, { quantity, low, high }: Kept, days: number): string {
  const { value, belowDetection, kit } = line.entry.body as BodyOf<'reading'>
  const means = meaningInList(line.entry)
  // With which kit it was read stands in the log.
  const read = `${said(line).replace(` (${kit})`, '')}${means === undefined ? '' : ` (${means})`}, ${ago(days)}`
  if (value === null) return `${read}.`
  const place = value < low ? 'below' : value > high ? 'above' : belowDetection ? 'perhaps below' : 'within'
  const inUnit = means === undefined ? '' : ` ${readQuantities[quantity]}`
  return `${read}: ${place} the ${plain(low)} to ${plain(high)}${inUnit} that reefs like this are kept in.`
}

/** Nothing narrows the outlook like a reading where there is none, or an old one. */
function test(readings: readonly { readonly band: Kept; readonly days: number | undefined }[]): string[] {
  const unread = readings.filter(({ days }) => days === undefined)
  if (unread.length > 0)
    return [`Test ${names(unread)} first: without a reading the outlook starts from what is usual.`]
  const old = readings.filter(({ days = 0 }) => days >= fresh_days)
  const longest = Math.max(...old.map(({ days = 0 }) => days))
  return old.length > 0 ? [`Test ${names(old)}: the last reading was ${ago(longest)}.`] : []
}

const names = (readings: readonly { readonly band: Kept }[]): string =>
  readings.map(({ band }) => band.quantity).join(' and ')

function survey(system: System, holding: readonly JournalLine[], today: string): string[] {
  if (system.surfaces.length === 0) return []
  const last = holding.find(({ entry }) => entry.kind === 'survey')
  if (last === undefined)
    return ['No surface has been surveyed: what grows where is known from the letter alone.']
  const days = daysSince(last.entry.at, today)
  return days < 2 * fresh_days ? [] : [`Survey a surface: the last survey was ${ago(days)}.`]
}

/** The routine counts from the last change in the log. */
function changeDue(system: System, holding: readonly JournalLine[], today: string): string[] {
  const routine = system.equipment.find((one) => one.kind === 'water change')
  const last = holding.find(({ entry }) => entry.kind === 'water-change')
  if (routine?.kind !== 'water change' || last === undefined) return []
  const left = Math.round(routine.every_days) - daysSince(last.entry.at, today)
  const what = `A water change of ${amount('volume', routine.volume_L)}`
  if (left < 0) return [`${what} has been due for ${days(-left)}.`]
  return left < 4 ? [`${what} is due ${left === 0 ? 'today' : `in ${days(left)}`}.`] : []
}

const daysSince = (at: string, today: string): number =>
  Math.round((Date.parse(today) - Date.parse(at.slice(0, 10))) / 86_400_000)

const days = (count: number): string => (count === 1 ? 'a day' : `${count} days`)

function ago(count: number): string {
  if (count <= 0) return 'today'
  if (count === 1) return 'yesterday'
  return count < 60 ? `${count} days ago` : `${Math.round(count / 30.4)} months ago`
}
