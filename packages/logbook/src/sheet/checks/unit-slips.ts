import { convert } from '@holdfast/quantities'

import { type Account, placeName } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import type { Questions } from '../questions.ts'
import { type Changes, changed, median, type Run, runsOf } from './neighbours.ts'

/** A way in which readings come to be written in another form or unit without a word. */
interface Slip {
  /** What they were likely written in. */
  readonly as: string
  readonly asWritten: string
  /** What such a figure is multiplied by. */
  readonly factor: number
  /** How far the jump may be from the factor, as a ratio. */
  readonly width: number
  readonly fewest: number
  /** Whether it must end within the sheet: a smaller jump may be the water's. */
  readonly mustEnd: boolean
}

const form = (as: string, asWritten: string, factor: number, mustEnd: boolean): readonly Slip[] => [
  { as: `as ${as}`, asWritten: `as ${asWritten}, as written`, factor, width: 1.25, fewest: 2, mustEnd },
]
const thousand = (asWritten: string): Slip => ({
  as: 'as ppb',
  asWritten: `${asWritten}, as written`,
  factor: 1e-3,
  width: 3,
  fewest: 1,
  mustEnd: false,
})

function slipsOf({ series, measure }: TakenValue): readonly Slip[] {
  const unit = measure.unit ?? ''
  const isMass = /^(?:mg\/l|ppm)/i.test(unit)
  switch (series.quantity) {
    case 'nitrate':
      return isMass ? [...atom('N', 'NO3', measure.form, false), thousand(unit)] : []
    case 'nitrite':
      return isMass ? [...atom('N', 'NO2', measure.form, true), thousand(unit)] : []
    case 'phosphate':
      return isMass ? [...atom('P', 'PO4', measure.form, true), thousand(unit)] : []
    case 'ammonia':
      return isMass ? [thousand(unit)] : []
    case 'alkalinity':
      return alkalinitySlips(unit)
    default:
      return []
  }
}

function atom(of: 'N' | 'P', ion: string, written: string | undefined, mustEnd: boolean): readonly Slip[] {
  const factor = convert(1, `mg ${of}/L`, `mg ${ion}/L`)
  const isAtom = /(?:^|-)[NP]$/.test(written ?? '')
  return isAtom ? form(ion, of, 1 / factor, mustEnd) : form(of, ion, factor, mustEnd)
}

function alkalinitySlips(unit: string): readonly Slip[] {
  const perDegree = convert(1, 'dKH', 'meq/L')
  const isDegree = /d?kh|°d/i.test(unit)
  const isCharge = /meq|mval/i.test(unit)
  const wide = { width: 1.25, fewest: 2, mustEnd: true }
  if (isDegree) return [{ as: 'in meq/L', asWritten: 'in dKH, as written', factor: 1 / perDegree, ...wide }]
  return isCharge ? [{ as: 'in dKH', asWritten: 'in meq/L, as written', factor: perDegree, ...wide }] : []
}

/**
 * Readings that fall or rise by just the factor between two forms or units, stay there, and come back: they
 * wait until the keeper says in what they were written.
 */
export function unitSlips(
  values: readonly TakenValue[],
  questions: Questions,
  account: Account,
): readonly TakenValue[] {
  const changes = new Map<string, Partial<TakenValue> | 'left out'>()
  for (const run of runsOf(values)) {
    const [first] = run.values
    if (first === undefined) continue
    for (const slip of slipsOf(first)) {
      const found = stretch(run, slip)
      if (found === undefined) continue
      for (const [place, change] of asked(found, slip, questions, account)) changes.set(place, change)
      break
    }
  }
  return changed(values, changes satisfies Changes)
}

/** The readings of the stretch, or undefined where there is none. */
function stretch(
  { values, figures }: Run,
  { factor, width, fewest, mustEnd }: Slip,
): readonly TakenValue[] | undefined {
  if (figures.length < fewest + 3) return undefined
  const isNear = (ratio: number): boolean => ratio < width && ratio > 1 / width
  const away: number[] = []
  // a reading is off where its figure, turned, is that of the readings which are not off
  const usual = usualValue(
    figures.map(({ value }) => value),
    factor,
  )
  if (usual === undefined) return undefined
  let from = -1
  for (const [place, { value }] of figures.entries()) {
    const before = figures
      .slice(0, place)
      .filter((_, at) => !away.includes(at))
      .slice(-3)
    const near = before.length > 0 ? median(before.map((one) => one.value)) : usual
    const isOff = isNear((value * factor) / near) && !isNear(value / near)
    if (isOff && (from < 0 || away.at(-1) === place - 1)) {
      if (from < 0) from = place
      away.push(place)
    } else if (from >= 0) break
  }
  const end = away.at(-1)
  if (end === undefined || away.length < fewest || away.length > figures.length / 2) return undefined
  const after = figures[end + 1]
  const start = figures[from - 1]
  if (mustEnd && (after === undefined || start === undefined)) return undefined
  if (after === undefined && away.length < fewest + 1 && factor > 1e-2) return undefined
  // what comes after must be back where it was before
  const back = after === undefined || start === undefined || isNear(after.value / start.value)
  if (!back) return undefined
  const off = away.flatMap((place) => values[figures[place]?.at ?? -1] ?? [])
  // a stretch in which other forms are written, or that begins with a new kit, is not a slip
  return off.some((value) => value.value.unit !== undefined || value.kitFrom !== undefined) ? undefined : off
}

/** The middle of the readings that are not off: the larger cluster of the two. */
function usualValue(values: readonly number[], factor: number): number | undefined {
  const middle = median(values)
  return middle > 0 && factor > 0 ? middle : undefined
}

function asked(
  off: readonly TakenValue[],
  { as, asWritten, factor }: Slip,
  questions: Questions,
  account: Account,
): readonly (readonly [string, Partial<TakenValue> | 'left out'])[] {
  const places = off.map(placeName)
  const [first = ''] = places
  const last = (places.at(-1) ?? '').replace(/^.*!/, '')
  const where = places.length > 1 ? `${first}:${last}` : first
  const times = (factor > 1 ? factor : 1 / factor).toPrecision(3)
  const which = places.length > 1 ? `${places.length} readings are` : 'A reading is'
  const why = `${factor > 1 ? 'lower' : 'higher'} than ${places.length > 1 ? 'their' : 'its'} neighbours by a factor near ${times}`
  const options = [as, asWritten, 'leave out']
  const answer = questions.choose(
    { key: where, where },
    'unit-slip',
    `${which} ${why}: were they written ${as}?`,
    options,
    places,
    as,
  )
  return off.map((value): readonly [string, Partial<TakenValue> | 'left out'] => {
    const place = placeName(value)
    const written = value.value.value ?? 0
    account.point(value, value.content.text, why, 'asked', String(Number((written * factor).toPrecision(4))))
    if (answer === undefined) account.wait(value)
    if (answer === 'leave out') account.list(value, value.content.text, 'left out by the keeper')
    if (answer === undefined || answer === 'leave out') return [place, 'left out']
    if (answer === asWritten) return [place, { suspect: true }]
    return [place, { suspect: true, value: turned(value, factor), valueAsWritten: written }]
  })
}

function turned({ value }: TakenValue, factor: number): TakenValue['value'] {
  const { interval } = value
  return {
    ...value,
    value: value.value === null ? null : value.value * factor,
    ...(interval && { interval: [interval[0] * factor, interval[1] * factor] as const }),
  }
}
