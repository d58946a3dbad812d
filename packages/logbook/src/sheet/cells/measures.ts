import { grouped } from '../grouped.ts'
import type { Noted } from '../notes/take-notes.ts'
import type { Questions } from '../questions.ts'
import type { QuestionTopic } from '../sheet.ts'
import { isUnitOf } from '../table/header.ts'
import type { Series } from '../table/table.ts'
import { plain } from '../words/plain.ts'
import type { FoundValue } from './gathered.ts'
import type { Measure } from './measure.ts'

/** Figures that only one unit of a quantity can come to in sea water that holds life; from, to (estimates). */
const onlyUnit: Readonly<
  Partial<Record<Series['quantity'], readonly (readonly [unit: string, low: number, high: number])[]>>
> = {
  temperature: [
    ['°C', 5, 40],
    ['°F', 50, 104],
  ],
  salinity: [
    ['SG', 1, 1.06],
    ['psu', 4, 50],
  ],
  calcium: [['mg/L', 200, 700]],
  magnesium: [['mg/L', 700, 2200]],
}

/** How each value is to be read: by its header, the answers, and notes that change form or unit from a row on. */
export function measures(
  found: readonly FoundValue[],
  noted: readonly Noted[],
  questions: Questions,
): (value: FoundValue) => Measure {
  const withoutUnit = found.filter(({ series }) => series.header.unit === undefined)
  const bare = grouped(withoutUnit, ({ series }) => series.key)
  const siblings = siblingUnits(found)
  const bySeries = new Map<string, Measure>()
  const changes = noted.flatMap(({ events, table, row }) =>
    events.flatMap((event) => (event.kind === 'unit-change' ? [{ ...event, table, row }] : [])),
  )
  return ({ series, table, row }) => {
    const known =
      bySeries.get(series.key) ??
      measureOf(series, questions, figuresOf(bare.get(series.key) ?? []), siblings)
    bySeries.set(series.key, known)
    const change = changes.findLast(
      (one) => one.table === table && one.row <= row && one.quantity === series.quantity,
    )
    if (change === undefined) return known
    const key = `${series.key}\n${changes.indexOf(change)}`
    const { form, unit } = change
    const after = bySeries.get(key) ?? {
      ...known,
      ...(form !== undefined && { form }),
      ...(unit !== undefined && { unit }),
    }
    bySeries.set(key, after)
    return after
  }
}

function measureOf(
  series: Series,
  questions: Questions,
  figures: readonly number[],
  siblings: ReadonlyMap<string, string>,
): Measure {
  const { quantity, header, key, titleUnit } = series
  const answer = (topic: QuestionTopic): string | undefined => questions.answer(topic, key)
  const isName = plain(header.unit ?? '') === 'kh'
  const doubt =
    isName && titleUnit !== undefined && answer('unit') === undefined ? ['dKH', 'ppm CaCO3'] : undefined
  const ofTitle = titleUnit !== undefined && isUnitOf(quantity, titleUnit) ? titleUnit : undefined
  const unit =
    answer('unit') ?? header.unit ?? ofTitle ?? deduced(quantity, figures) ?? siblings.get(quantity)
  const form = header.form ?? answer(`${quantity}-form` as QuestionTopic)
  const reference = header.reference ?? answer('sg-reference')
  const salinityScale = answer('salinity-scale')
  return {
    quantity,
    ...(unit !== undefined && { unit }),
    ...(form !== undefined && { form }),
    ...(reference !== undefined && { reference }),
    ...(salinityScale !== undefined && { salinityScale }),
    ...(doubt !== undefined && { unitInDoubt: doubt }),
  }
}

/** The figure that each cell begins with. */
const figuresOf = (found: readonly FoundValue[]): readonly number[] =>
  found
    .map(({ content }) => Number(/[\d.,]*\d/.exec(content.text)?.[0].replace(',', '.')))
    .filter((figure) => Number.isFinite(figure))

function deduced(quantity: Series['quantity'], figures: readonly number[]): string | undefined {
  if (figures.length === 0) return undefined
  return onlyUnit[quantity]?.find(([, low, high]) =>
    figures.every((figure) => figure >= low && figure <= high),
  )?.[0]
}

/** In a sheet with one reading a row, the unit that all other rows of a quantity have. */
function siblingUnits(found: readonly FoundValue[]): ReadonlyMap<string, string> {
  const units = new Map<string, Set<string>>()
  const seen = new Set<Series>()
  for (const { series, table } of found) {
    const { unit } = series.header
    if (seen.has(series) || table.layout !== 'long' || unit === undefined) continue
    seen.add(series)
    const size = /^(?:mg\/l|ppm)/i.test(unit) && series.quantity !== 'alkalinity' ? 'mg/L' : unit
    units.set(series.quantity, (units.get(series.quantity) ?? new Set()).add(size))
  }
  return new Map(
    [...units].flatMap(([quantity, known]) => (known.size === 1 ? [[quantity, [...known][0] ?? '']] : [])),
  )
}
