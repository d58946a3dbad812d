import type { SheetReading } from '../sheet.ts'
import type { Series } from '../table/table.ts'
import { placeName } from './account.ts'
import type { TakenValue } from './take-values.ts'

type Draft = { -readonly [Key in keyof SheetReading]: SheetReading[Key] }

/** The reading of a value, once its neighbours were looked at. A long log has a million: no copy is made. */
export function readingOf(taken: TakenValue): SheetReading {
  const { when, value: said, series, measure } = taken
  const reading: Draft = {
    date: when.date,
    quantity: series.quantity,
    value: said.value,
    belowDetection: said.belowDetection,
    text: taken.content.text,
    cell: placeName(taken),
  }
  const unit = said.unit ?? (said.limitless === 'word' ? series.header.unit : unitOf(series))
  const form = said.form ?? (measure.unit === undefined ? undefined : measure.form)
  const kit = series.kit ?? taken.kitFrom
  const remark = [taken.remark, said.remark].filter((one) => one !== undefined).join('; ')
  if (when.time !== undefined) reading.time = when.time
  if (when.half !== undefined) reading.half = when.half
  if (when.dateAsWritten !== undefined) reading.dateAsWritten = when.dateAsWritten
  if (said.limitless === 'zero' && said.value === 0) reading.zeroAsWritten = true
  if (said.aboveRange) reading.aboveRange = true
  if (said.approximate) reading.approximate = true
  if (said.interval) reading.interval = said.interval
  if (unit !== undefined) reading.unit = unit
  if (form !== undefined) reading.form = form
  if (kit !== undefined) reading.kit = kit
  if (series.tank !== undefined) reading.tank = series.tank
  if (remark !== '') reading.remark = remark
  if (taken.suspect) reading.suspect = true
  if (taken.likely !== undefined) reading.likely = taken.likely
  if (taken.valueAsWritten !== undefined) reading.valueAsWritten = taken.valueAsWritten
  if (taken.firstValue !== undefined) reading.firstValue = taken.firstValue
  return reading
}

function unitOf({ header, titleUnit }: Series): string | undefined {
  const unit = header.unit ?? titleUnit
  return unit === undefined || header.reference === undefined ? unit : `${unit} ${header.reference}`
}
