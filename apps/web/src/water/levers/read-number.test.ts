import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { chooseWays } from '../../ways/ways.ts'
import { inUnit, keptOf, readNumber, shownReach } from './read-number.ts'

const volume = { title: 'Water each time', measure: 'volume' } as const
const days = { title: 'Days between changes', measure: 'days' } as const
const media = { title: 'Media each time', measure: 'mass' } as const
const half = { min: 0, max: 150, step: 1 }
const weeks = { min: 1, max: 42, step: 1 }

describe('a value typed into a lever', () => {
  it('is taken in the unit of the lever, or in the unit typed', () => {
    expect(readNumber(volume, half, '20')).toEqual({ value: 20 })
    expect(readNumber(volume, half, '10 US gal')).toEqual({ value: expect.closeTo(37.854, 3) })
    expect(readNumber(days, weeks, '2 weeks')).toEqual({ value: 14 })
    expect(readNumber(media, half, '2 oz')).toEqual({ value: expect.closeTo(56.699, 3) })
  })

  it('may be no water change and no media at all', () => {
    expect(readNumber(volume, half, '0 L')).toEqual({ value: 0 })
    expect(readNumber(media, half, '0')).toEqual({ value: 0 })
  })

  it('is refused in words that say what is accepted, and never cut to fit', () => {
    expect(readNumber(volume, half, '60 foo')).toEqual({
      issue:
        'Water each time: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.',
    })
    expect(readNumber(volume, half, '900 L')).toEqual({
      issue: 'Water each time: 900 L is out of reach of this lever. Give 0 to 150 L.',
    })
  })
})

describe('a lever of a keeper who reads gallons', () => {
  beforeAll(() => {
    vi.stubGlobal('localStorage', { setItem: () => undefined })
    chooseWays({ units: 'US' })
  })
  afterAll(() => {
    chooseWays({ units: 'metric' })
    vi.unstubAllGlobals()
  })

  it('counts gallons in round steps, and a bare number is gallons', () => {
    expect(inUnit('volume', 60)).toBe('15.9 US gal')
    expect(readNumber(volume, half, '10')).toEqual({ value: expect.closeTo(37.854, 3) })
    expect(shownReach('volume', { min: 0, max: 300, step: 5 })).toEqual({ min: 0, max: 80, step: 1 })
    expect(keptOf('volume', 80)).toBeCloseTo(302.83, 2)
  })
})
