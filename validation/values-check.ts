import { askWater, type WaterIssue } from '@holdfast/seawater'
import { readValues, type ValueRow } from './values-file.ts'

/** Every row of a file of check values asked: a line a failure, then the counts. */
export interface ValuesChecked {
  readonly lines: readonly string[]
  readonly passed: number
  readonly failed: number
  /** 1 if anything failed or nothing passed. */
  readonly exitCode: 0 | 1
}

/** @param text a CSV with the columns id, quantity, inputs (JSON), expected, unit, tolerance */
export function checkValues(text: string): ValuesChecked {
  const { rows, wrong } = readValues(text)
  const failures = rows.flatMap((row) => {
    const failure = failureOf(row)
    return failure === undefined ? [] : [failure]
  })
  const failed = failures.length + wrong.length
  const passed = rows.length - failures.length
  return {
    lines: [...wrong, ...failures, `${passed} passed, ${failed} failed`],
    passed,
    failed,
    exitCode: failed > 0 || passed === 0 ? 1 : 0,
  }
}

/** What does not hold, or undefined where the row holds. */
function failureOf(row: ValueRow): string | undefined {
  const { id, quantity, inputs, expected, unit, tolerance } = row
  const failure = (got: string) =>
    `${id} ${quantity} ${inputs}: expected ${expected} ${unit}, got ${got}, tolerance ${tolerance}`
  const [wanted, allowed] = [numberIn(expected), numberIn(tolerance)]
  const given = objectIn(inputs)
  if (given === undefined) return failure('nothing: inputs is no JSON object')
  if (wanted === undefined) return failure('nothing: expected is no number')
  if (allowed === undefined || allowed < 0) return failure('nothing: tolerance is no number from 0')
  const answer = askWater(quantity, given)
  if (!answer.ok) return failure(`nothing: ${answer.issues.map(inWords).join(' ')}`)
  if (answer.unit !== 'same as value' && answer.unit !== unit)
    return failure(`${answer.value} ${answer.unit}, which is another unit`)
  // A difference of the tolerance itself passes, though decimals such as 0.1 are not exact in binary.
  if (Math.abs(answer.value - wanted) <= allowed * (1 + 1e-9)) return undefined
  return failure(`${answer.value} ${unit}`)
}

function inWords({ where, got, accepted, next }: WaterIssue): string {
  const found = got === undefined ? 'is missing' : `${JSON.stringify(got)} is not accepted`
  return `${where}: ${found}; accepted: ${accepted}. ${next}`
}

function numberIn(text: string): number | undefined {
  const value = text === '' ? Number.NaN : Number(text)
  return Number.isFinite(value) ? value : undefined
}

function objectIn(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const parsed: unknown = JSON.parse(text)
    if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) return undefined
    return parsed as Readonly<Record<string, unknown>>
  } catch {
    return undefined
  }
}
