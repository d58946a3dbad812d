import { type Account, placeName } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import type { Questions } from '../questions.ts'
import { type Changes, changed, median, type Run, runsOf } from './neighbours.ts'

const powers = [10, 100, 0.1, 0.01]
/** How near to its neighbours a figure must come, once its point is moved. */
const near = 0.25
const reach = 3

/**
 * A single figure ten or a hundred times its neighbours has likely lost its point. It is taken as written and
 * pointed out, and the keeper may take what was likely meant.
 */
export function lostPoints(
  values: readonly TakenValue[],
  questions: Questions,
  account: Account,
): readonly TakenValue[] {
  const changes = new Map<string, Partial<TakenValue> | 'left out'>()
  for (const { values: run, figures } of runsOf(values)) {
    for (const [place, { at, value }] of figures.entries()) {
      const taken = run[at]
      if (isAmong(figures, place, value)) continue
      const around = [
        ...figures.slice(Math.max(0, place - reach), place),
        ...figures.slice(place + 1, place + 1 + reach),
      ]
      if (taken === undefined || around.length < reach) continue
      const usual = median(around.map((one) => one.value))
      const alike = around.filter((one) => one.value > usual / 2 && one.value < usual * 2)
      const isSteady = alike.length >= (2 * around.length) / 3
      const power = powers.find((one) => Math.abs(value / one / usual - 1) < near)
      if (power === undefined || !isSteady) continue
      changes.set(placeName(taken), offer(taken, value / power, power, { questions, account }))
    }
  }
  return changed(values, changes satisfies Changes)
}

/**
 * Whether a figure is too near to all its neighbours to be ten times any of them, as most are: told without
 * sorting them.
 */
function isAmong(figures: Run['figures'], place: number, value: number): boolean {
  let [low, high] = [Number.POSITIVE_INFINITY, 0]
  for (let at = Math.max(0, place - reach); at <= place + reach && at < figures.length; at++) {
    const other = at === place ? undefined : figures[at]?.value
    if (other === undefined) continue
    if (other < low) low = other
    if (other > high) high = other
  }
  const least = 10 * (1 - near)
  return value < least * low && value > high / least
}

function offer(
  taken: TakenValue,
  likely: number,
  power: number,
  { questions, account }: { readonly questions: Questions; readonly account: Account },
): Partial<TakenValue> | 'left out' {
  const place = placeName(taken)
  const { text } = taken.content
  const figure = Number(/[\d.,]*\d/.exec(text)?.[0].replace(',', '.'))
  const meant = String(Number((figure / power).toPrecision(6)))
  const times = power > 1 ? `${power} times` : `a ${power === 0.1 ? 'tenth' : 'hundredth'} of`
  const why = `${times} its neighbours: ${meant} meant?`
  account.point(taken, text, why, 'read as written', meant)
  const options = [`${meant}`, `${text}, as written`, 'leave out']
  const answer = questions.offer(
    { key: place, where: place },
    'value',
    `"${text}" is ${why}`,
    options,
    [place],
    meant,
  )
  if (answer === 'leave out') return 'left out'
  if (answer !== meant) return { suspect: true, likely }
  const { value } = taken
  return {
    suspect: true,
    value: { ...value, value: likely },
    ...(value.value !== null && { valueAsWritten: value.value }),
  }
}
