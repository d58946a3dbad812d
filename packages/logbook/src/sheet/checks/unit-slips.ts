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
      const found = stretches(run, slip)
      for (const off of found)
        for (const [place, change] of asked(off, slip, questions, account)) changes.set(place, change)
      if (found.length > 0) break
    }
  }
  return changed(values, changes satisfies Changes)
}

/** Readings before which a stretch is looked for. */
const reach = 3

/** The stretches of a run in which every figure, turned, is that of the readings around. */
function stretches({ values, figures }: Run, slip: Slip): readonly (readonly TakenValue[])[] {
  const { factor, width, fewest, mustEnd } = slip
  if (figures.length < fewest + reach) return []
  const isNear = (ratio: number): boolean => ratio < width && ratio > 1 / width
  const usual = median(figures.map(({ value }) => value))
  const found: TakenValue[][] = []
  let settled: number[] = []
  let off: Run['figures'][number][] = []
  const close = (after: number | undefined): void => {
    const start = settled.at(-1)
    const ends = after !== undefined && start !== undefined
    const isLong = off.length >= (ends || factor <= 1e-2 ? fewest : fewest + 1)
    const isBack = !ends || isNear(after / start)
    const taken = off.flatMap(({ at }) => values[at] ?? [])
    // a stretch with units of its own, or that begins with a new kit, is no slip
    const isPlain = taken.every(
      (value) => value.value.unit === undefined && !value.kitFrom?.startsWith('kit from'),
    )
    const isSlip = isLong && isBack && isPlain && (ends || !mustEnd) && off.length <= figures.length / 2
    if (isSlip) found.push(taken)
    else settled = [...settled, ...off.map(({ value }) => value)].slice(-reach)
    off = []
  }
  for (const figure of figures) {
    const near = settled.length > 0 ? median(settled) : usual
    if (isNear((figure.value * factor) / near) && !isNear(figure.value / near)) off.push(figure)
    else {
      if (off.length > 0) close(figure.value)
      settled = [...settled, figure.value].slice(-reach)
    }
  }
  if (off.length > 0) close(undefined)
  return found
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
