import { type Answer, type Issue, type IssueCode, refused, understood } from './issue.ts'
import { type QuantityName, quantities, readQuantity } from './quantities.ts'
import type { Reading, ReadingOptions } from './reading.ts'
import { isHeld, mapStated, oneNumber, type Stated } from './stated.ts'

/** A reading in a unit that was asked for; a limit stays a limit and a span a span. */
export interface ReadingIn {
  readonly unit: string
  readonly stated: Stated
  readonly step?: number
}

/** What units and readings leave open, as where the reading was read. */
type Setting = Pick<ReadingOptions, 'density' | 'hoursPerDay' | 'temperature' | 'reference'>

/**
 * A reading in another unit of its quantity; where the unit names no form, that of the reading is kept.
 *
 * @returns a question or issues where the unit is not clear or of another scale, as for what is typed
 * @example readingIn('nitrate', fiveOfNitrate, 'mg/L NO3-N') // 1.1295 mg/L NO3-N
 */
export function readingIn(
  name: QuantityName,
  reading: Reading,
  to: string,
  setting: Setting = {},
): Answer<ReadingIn> {
  const where = `${quantities[name].title}, unit asked for`
  const read = (figure: 0 | 1): Answer<Reading> =>
    readQuantity(name, `${figure} ${to}`, { ...setting, where, ...(reading.form && { form: reading.form }) })
  const issue = (code: IssueCode): Issue => {
    const accepted = [reading.canonical]
    return { code, where, got: to, accepted, next: 'give-same-scale' }
  }
  const one = read(1)
  if (!one.ok) return about(one, to)
  if (one.value.canonical !== reading.canonical) return refused(issue('needs-sea-water'))
  // only temperatures begin elsewhere; what is read above 0 only begins at 0
  const zero = read(0)
  const start = (zero.ok ? oneNumber(zero.value.stated) : undefined) ?? 0
  const size = (oneNumber(one.value.stated) ?? Number.NaN) - start
  const stated = mapStated(reading.stated, (value) => (value - start) / size)
  if (!isHeld(stated)) return refused(issue('too-large'))
  const { step } = reading
  return understood({ unit: to, stated, ...(step !== undefined && { step: step / size }) })
}

/** A reading in every usual unit of its quantity that can be had without knowing more. */
export function readingInCommonUnits(
  name: QuantityName,
  reading: Reading,
  setting?: Setting,
): readonly ReadingIn[] {
  return quantities[name].common.flatMap((unit) => {
    const answer = readingIn(name, reading, unit, setting)
    return answer.ok ? [answer.value] : []
  })
}

/** Issues and options about the unit alone, without the 1 that it was read with. */
function about<T>(answer: Exclude<Answer<Reading>, { ok: true }>, to: string): Answer<T> {
  if (answer.issues !== undefined) return refused(...answer.issues.map((issue) => ({ ...issue, got: to })))
  const { ask } = answer
  const options = ask.options.map((option) => ({ ...option, answer: option.answer.replace(/^1 /, '') }))
  const question = ask.question.replace(`"${ask.got}"`, `"${to}"`)
  return { ok: false, ask: { ...ask, got: to, question, options } }
}
