import type { Entry } from '@holdfast/logbook'
import { entryOf } from './log-site.ts'

/** Last day of an invented log. */
const last = '2026-03-01'
const days = 5 * 365

const dateOf = (ago: number) => new Date(Date.parse(last) - ago * 86_400_000).toISOString().slice(0, 10)

/** A slow wave with a yearly and a three-weekly part, between 0 and 1, the same every time. */
const wave = (day: number) => 0.5 + 0.35 * Math.sin(day / 58) + 0.15 * Math.sin(day / 3.3)

const reading = (at: string, quantity: 'nitrate' | 'phosphate', value: number): Entry => {
  const form = quantity === 'nitrate' ? 'NO3' : 'PO4'
  const body = { quantity, value, belowDetection: false, text: String(value), unit: 'mg/L', form } as const
  return entryOf({ kind: 'reading', at, body })
}

/** Three readings of one week: the least from which anything can be said. */
export const threeReadings = (): readonly Entry[] =>
  [6, 3, 0].map((ago, i) => reading(dateOf(ago), i === 1 ? 'phosphate' : 'nitrate', i === 1 ? 0.05 : 5 + i))

/** Nitrate and phosphate read daily for five years, water changed every other week, algae looked at monthly. */
export function fiveYears(): readonly Entry[] {
  return Array.from({ length: days }, (_, at) => days - 1 - at).flatMap((ago, day) => {
    const at = dateOf(ago)
    return [
      reading(at, 'nitrate', Number((2 + 8 * wave(day)).toPrecision(2))),
      reading(at, 'phosphate', Number((0.03 + 0.07 * wave(day + 40)).toFixed(2))),
      ...(day % 14 === 0
        ? [entryOf({ kind: 'water-change', at, body: { volume_L: 30, text: '30 L' } })]
        : []),
      ...(day % 30 === 0
        ? [
            entryOf({
              kind: 'survey',
              at,
              body: { surface: 'rock_face', algae: 'hair_green', cover: 0.1, text: '' },
            }),
          ]
        : []),
    ]
  })
}
