import { deviate } from './draws.ts'
import type { Deed } from './husbandry.ts'
import { dates } from './husbandry.ts'
import type { Truth } from './truth.ts'

/** Of the kits and of the eye; what the keeper reads is drawn from it. */
const seed = 2026

/** One row of the keeper's spreadsheet, as typed. */
export interface Row {
  readonly date: string
  readonly nitrate: string
  readonly phosphate: string
  readonly note: string
}

const weekly = dates('2025-11-16', 7)
const away = ['2026-05-03', '2026-05-10']
/** The month in which no phosphate was tested. */
const noReagent = (date: string): boolean => date >= '2026-08-02' && date <= '2026-08-30'

/** Days on which the water was tested; the first day and every Sunday, but for the holiday. */
export const testDates = ['2025-11-10', ...weekly.filter((date) => !away.includes(date))]

/** A slip of the decimal point, and a Sunday that was typed twice. */
const slip = '2026-02-15'
const twice = '2026-09-13'

/** What the kits showed: off by a share of the value, read to the steps of the chart. */
const nitrateRead = (truth: number, date: string): number =>
  Math.max(0, Math.round(truth * (1 + 0.1 * deviate(seed, `nitrate ${date}`))))

const phosphateRead = (truth: number, date: string): number =>
  Math.max(0, Math.round((truth * (1 + 0.1 * deviate(seed, `phosphate ${date}`))) / 0.01) * 0.01)

/** Below 0.03 mg/L the phosphate kit shows nothing, below 1 mg/L that of nitrate. */
const phosphateLimit = 0.03

function phosphateCell(truth: number, date: string): string {
  if (noReagent(date)) return ''
  const read = phosphateRead(truth, date)
  if (read < phosphateLimit) return `<${phosphateLimit}`
  return date === slip ? (10 * read).toFixed(1) : read.toFixed(2)
}

function nitrateCell(truth: number, date: string): string {
  const read = nitrateRead(truth, date)
  return read < 1 ? '<1' : String(read)
}

const remarks: Readonly<Record<string, string>> = {
  '2025-11-10': 'new notebook',
  '2026-05-17': 'first test after the holiday',
  '2026-08-02': 'no phosphate reagent left',
  '2026-09-06': 'new phosphate kit, same scale',
}

/** The rows of the spreadsheet, one for each day of tests, one of them twice. */
export function rowsOf(truthOn: (date: string) => Truth): readonly Row[] {
  return testDates.flatMap((date) => {
    const truth = truthOn(date)
    const row = {
      date,
      nitrate: nitrateCell(truth.nitrate_mg_L, date),
      phosphate: phosphateCell(truth.phosphate_mg_L, date),
      note: remarks[date] ?? '',
    }
    return date === twice ? [row, row] : [row]
  })
}

/** The spreadsheet as a file of comma-separated values. */
export function csvOf(rows: readonly Row[]): string {
  const lines = rows.map(({ date, nitrate, phosphate, note }) =>
    [date, nitrate, phosphate, note.includes(',') ? `"${note}"` : note].join(','),
  )
  return `${['Date,Nitrate (mg/L NO3),Phosphate (mg/L PO4),Notes', ...lines].join('\n')}\n`
}

/** First Sunday of each month: by eye, to the nearest hundredth or, above a tenth, to five. */
export const surveyDates = testDates.filter((date) => date.slice(8) <= '07' && date !== '2025-11-10')

export function surveysOf(truthOn: (date: string) => Truth): readonly Deed[] {
  return surveyDates.flatMap((date) =>
    ['rock face', 'glass'].map((surface): Deed => {
      const truth = truthOn(date).cover(surface, 'hair_green')
      const seen = Math.max(0, truth * (1 + 0.12 * deviate(seed, `cover ${surface} ${date}`)))
      const cover = seen < 0.1 ? Math.round(seen * 100) / 100 : Math.min(1, Math.round(seen * 20) / 20)
      const text = `${surface}: hair algae about ${Math.round(cover * 100)} %`
      return { date, kind: 'survey', body: { surface, algae: 'hair_green', cover, text } }
    }),
  )
}
