import { afterEach, describe, expect, it } from 'vitest'
import { readAs } from '../../ways/testing.ts'
import { blanksOf } from './blanks-of.ts'
import { begun, filled, read, textAt, without } from './letter.ts'
import { asWritten, inOwnUnits } from './own-units.ts'
import type { Letter } from './paragraph.ts'
import { placeOf } from './path.ts'
import { starts } from './starts.ts'

let back = () => {}
afterEach(() => back())

const small = starts[0]
if (!small) throw new Error('The letter has starting points.')
/** As a keeper wrote it who measures in litres. */
const written: Letter = { ...small.document, timeZone: 'Europe/Lisbon', evaporation: '0.75 L/d' }

const blankAt = (letter: Letter, place: string) => {
  const blank = blanksOf(letter).find(({ path }) => placeOf(path) === place)
  if (!blank) throw new Error(`no blank at ${place}`)
  return blank
}
const at = (letter: Letter, place: string) => textAt(letter, blankAt(letter, place))

describe('a letter written in litres', () => {
  it('is read in gallons, pounds, inches and °F by who reads these', () => {
    back = readAs({ units: 'US' })
    const shown = inOwnUnits(written)
    // 1 US gal = 3.785411784 L, 1 lb = 0.45359237 kg, 1 in = 2.54 cm (NIST SP 811, appendix B).
    expect(at(shown, 'vessels 1, water')).toBe('13.2 US gal')
    expect(at(shown, 'vessels 1, length')).toBe('17.7 in')
    expect(at(shown, 'rock 1, mass')).toBe('15.4 lb')
    expect(at(shown, 'temperature')).toBe('77.9 °F')
    expect(at(shown, 'evaporation')).toBe('0.198 US gal/d')
    expect(at(shown, 'feeds 1, amount')).toBe('0.4 g/d')
  })

  it('has its decimal commas where the keeper writes commas', () => {
    back = readAs({ decimal: 'comma' })
    const shown = inOwnUnits(written)
    expect(at(shown, 'evaporation')).toBe('0,75 L/d')
    expect(at(shown, 'feeds 1, amount')).toBe('0,4 g/d')
    expect(at(shown, 'surfaces 1, area')).toBe('0,3 m²')
    const found = read(shown)
    if (!found.ok) throw new Error(JSON.stringify(found.issues))
    expect(found.system.feeds[0]?.g_per_day).toBe(0.4)
    expect(found.system.surfaces[0]?.area_m2).toBeCloseTo(0.3, 12)
  })

  it('keeps to the last digit what its reader did not touch, also where a sentence went', () => {
    back = readAs({ units: 'US', decimal: 'comma' })
    const shown = inOwnUnits(written)
    expect(asWritten(shown, written)).toEqual(written)
    const fed = filled(shown, blankAt(shown, 'vessels 1, water'), '14 US gal')
    expect(asWritten(fed, written)).toMatchObject({
      vessels: [{ water: '14 US gal', length: '45 cm' }],
      evaporation: '0.75 L/d',
    })
    const bare = without(shown, {
      key: '',
      pieces: [],
      removes: { path: ['surfaces', 0], words: '' },
    })
    expect(asWritten(bare, written).surfaces.map(({ area }) => area)).toEqual(['0.3 m2', '0.5 m2', '0.15 m2'])
  })
})

describe('a starting point', () => {
  it.each(starts)('is a system also in gallons and with commas: $title', (start) => {
    const metric = read(begun(start, 'Europe/Lisbon'))
    back = readAs({ units: 'US', decimal: 'comma' })
    const found = read(begun(start, 'Europe/Lisbon'))
    if (!found.ok || !metric.ok) throw new Error(JSON.stringify(found))
    const volumes = metric.system.vessels.map(({ volume_L }) => volume_L)
    // Three digits are written, so half of the third may be off: 0.5 in 100 at most.
    found.system.vessels.forEach(({ volume_L }, i) => {
      expect(Math.abs(volume_L / (volumes[i] ?? 0) - 1)).toBeLessThan(0.005)
    })
  })
})
