import { describe, expect, it } from 'vitest'
import { readNumber } from './read-number.ts'

const volume = { title: 'Volume of a water change', unit: 'L', min: 0, max: 150 } as const
const days = { title: 'Days from one to the next', unit: 'days', min: 1, max: 42 } as const

describe('a value typed into a lever', () => {
  it('is taken in the unit of the lever, or in the unit typed', () => {
    expect(readNumber(volume, '20')).toEqual({ value: 20 })
    expect(readNumber(volume, '10 US gal')).toEqual({ value: expect.closeTo(37.854, 3) })
    expect(readNumber(days, '2 weeks')).toEqual({ value: 14 })
  })

  it('may be no water change at all', () => {
    expect(readNumber(volume, '0 L')).toEqual({ value: 0 })
  })

  it('is refused in words that say what is accepted, and never cut to fit', () => {
    expect(readNumber(volume, '60 foo')).toEqual({
      issue:
        'Volume of a water change: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.',
    })
    expect(readNumber(volume, '900 L')).toEqual({
      issue: 'Volume of a water change: 900 L is out of reach of this lever. Give 0 to 150 L.',
    })
  })
})
