import { named } from '@holdfast/facts/names'
import type { Fan } from '@holdfast/inference'
import type { OutlookAnswer, ReadingWithError } from '../../worker/answers.ts'

/** What one fan shows, with the readings and the band that belong to it. */
export interface Subject {
  readonly key: string
  readonly title: string
  /** At the start of a sentence. */
  readonly name: string
  readonly unit: string
  /** Shares are shown as per cent. */
  readonly factor: number
  readonly colour: 'N' | 'P' | 'C'
  readonly fan: Fan
  readonly readings: readonly ReadingWithError[]
  readonly band?: { readonly low: number; readonly high: number }
}

/** The same answer has the same subjects, so that what is drawn of them need not be drawn again. */
const known = new WeakMap<OutlookAnswer, readonly Subject[]>()

export function subjectsOf(answer: OutlookAnswer): readonly Subject[] {
  const subjects = known.get(answer) ?? made(answer)
  known.set(answer, subjects)
  return subjects
}

function made(answer: OutlookAnswer): readonly Subject[] {
  return answer.outlook.fans.map((fan) => {
    const band = answer.bands.find((candidate) => candidate.quantity === fan.quantity)
    return {
      key: keyOf(fan),
      ...wordsFor(fan),
      fan,
      readings: answer.readings.filter(
        ({ reading }) =>
          reading.quantity === fan.quantity && reading.surface === fan.surface && reading.algae === fan.algae,
      ),
      ...(band ? { band: { low: band.low, high: band.high } } : {}),
    }
  })
}

export const keyOf = (fan: Fan) => [fan.quantity, fan.surface, fan.algae].filter(Boolean).join('.')

function wordsFor(fan: Fan): Pick<Subject, 'title' | 'name' | 'unit' | 'factor' | 'colour'> {
  if (fan.quantity === 'nitrate')
    return { title: 'Nitrate, mg/L NO3', name: 'Nitrate', unit: fan.unit, factor: 1, colour: 'N' }
  if (fan.quantity === 'phosphate')
    return { title: 'Phosphate, mg/L PO4', name: 'Phosphate', unit: fan.unit, factor: 1, colour: 'P' }
  if (fan.quantity === 'media load')
    return {
      title: 'Phosphorus on the media, mg P',
      name: 'The load of the media',
      unit: fan.unit,
      factor: 1,
      colour: 'P',
    }
  const what = named(fan.algae ?? 'algae')
  const where = named(fan.surface ?? 'all surfaces')
  return {
    title: `${what}, % of ${where}`,
    name: `Cover of ${what} on ${where}`,
    unit: '%',
    factor: 100,
    colour: 'C',
  }
}
