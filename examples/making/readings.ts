import { deviate } from './draws.ts'
import type { Deed, Surveys, Tests } from './story.ts'
import type { Truth } from './truth.ts'

/** One row of the keeper's spreadsheet, as typed. */
export interface Row {
  readonly date: string
  readonly nitrate: string
  readonly phosphate: string
  readonly note: string
}

/** What the kits showed: off by a share of the value, read to the steps of the chart. */
const nitrateRead = (truth: number, date: string, seed: number): number =>
  Math.max(0, Math.round(truth * (1 + 0.1 * deviate(seed, `nitrate ${date}`))))

const phosphateRead = (truth: number, date: string, seed: number): number =>
  Math.max(0, Math.round((truth * (1 + 0.1 * deviate(seed, `phosphate ${date}`))) / 0.01) * 0.01)

/** Below 0.03 mg/L the phosphate kit shows nothing, below 1 mg/L that of nitrate. */
const phosphateLimit = 0.03

function phosphateCell(truth: number, date: string, { noReagent, slip, seed }: Tests): string {
  if (date >= noReagent.from && date <= noReagent.to) return ''
  const read = phosphateRead(truth, date, seed)
  if (read < phosphateLimit) return `<${phosphateLimit}`
  return date === slip ? (10 * read).toFixed(1) : read.toFixed(2)
}

function nitrateCell(truth: number, date: string, { seed }: Tests): string {
  const read = nitrateRead(truth, date, seed)
  return read < 1 ? '<1' : String(read)
}

/** The rows of the spreadsheet, one for each day of tests, one of them twice. */
export function rowsOf(tests: Tests, truthOn: (date: string) => Truth): readonly Row[] {
  return tests.dates.flatMap((date) => {
    const truth = truthOn(date)
    const row = {
      date,
      nitrate: nitrateCell(truth.nitrate_mg_L, date, tests),
      phosphate: phosphateCell(truth.phosphate_mg_L, date, tests),
      note: tests.remarks[date] ?? '',
    }
    return date === tests.twice ? [row, row] : [row]
  })
}

/** The spreadsheet as a file of comma-separated values. */
export function csvOf(rows: readonly Row[]): string {
  const lines = rows.map(({ date, nitrate, phosphate, note }) =>
    [date, nitrate, phosphate, note.includes(',') ? `"${note}"` : note].join(','),
  )
  return `${['Date,Nitrate (mg/L NO3),Phosphate (mg/L PO4),Notes', ...lines].join('\n')}\n`
}

/** By eye, to the nearest hundredth or, above a tenth, to five. */
export function surveysOf(
  { dates, of }: Surveys,
  seed: number,
  truthOn: (date: string) => Truth,
): readonly Deed[] {
  return dates.flatMap((date) =>
    of.map(({ surface, algae, called }): Deed => {
      const truth = truthOn(date).cover(surface, algae)
      const seen = Math.max(0, truth * (1 + 0.12 * deviate(seed, `cover ${surface} ${date}`)))
      const cover = seen < 0.1 ? Math.round(seen * 100) / 100 : Math.min(1, Math.round(seen * 20) / 20)
      const text = `${surface}: ${called} about ${Math.round(cover * 100)} %`
      return { date, kind: 'survey', body: { surface, algae, cover, text } }
    }),
  )
}
