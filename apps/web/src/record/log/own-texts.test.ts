import { blanksOf, type EntryKind } from '@holdfast/logbook'
import { describe, expect, it } from 'vitest'
import { nameToRemember, unitsFor, withUnits } from './own-texts.ts'

const blanks = (kind: EntryKind, typed = {}) => blanksOf(kind, {}, typed)

describe('a figure typed beside its unit', () => {
  const nitrate = blanks('reading', { quantity: 'nitrate' })

  it('of a reading has the unit in a blank of its own, word for word beside the figure', () => {
    const units = { value: 'mg/L NO3' }
    expect(withUnits(nitrate, { quantity: 'nitrate', value: '<5' }, units)).toEqual({
      quantity: 'nitrate',
      value: '<5',
      unit: 'mg/L NO3',
    })
  })

  it('keeps the unit that is typed', () => {
    const typed = { quantity: 'nitrate', value: '1,1 mg/L NO3-N', unit: 'left over' }
    expect(withUnits(nitrate, typed, { value: 'mg/L NO3' })).toEqual({
      quantity: 'nitrate',
      value: '1,1 mg/L NO3-N',
    })
  })

  it.each(['5 mg/L NO3', '5 mg/L', '<0.5 mg/L NO3-N', '25 °C', '12 %', 'nothing seen'])(
    'is not given a second unit: %s',
    (value) => {
      expect(withUnits(nitrate, { value }, { value: 'mg/L NO3' })).toEqual({ value })
    },
  )

  it.each(['5', '0,5', '<0.03', '5-10', '5 to 10', 'under 0.5', '~3'])('is bare as %s', (value) => {
    expect(withUnits(nitrate, { value }, { value: 'mg/L NO3' })).toEqual({ value, unit: 'mg/L NO3' })
  })

  it('of another kind has the unit written behind it', () => {
    const units = { volume: 'US gal' }
    expect(withUnits(blanks('water-change'), { volume: ' 10 ' }, units)).toEqual({ volume: '10 US gal' })
    expect(withUnits(blanks('water-change'), { volume: '40 L' }, units)).toEqual({ volume: '40 L' })
    expect(withUnits(blanks('water-change'), { volume: '' }, units)).toEqual({ volume: '' })
  })

  it('is offered the units of its quantity, a share only percent, and words none', () => {
    const of = (kind: EntryKind, name: string) => {
      const all = blanks(kind)
      return all.filter((blank) => blank.name === name).flatMap((blank) => unitsFor(blank, all))
    }
    expect(of('water-change', 'volume')).toContain('US gal')
    expect(of('feeding', 'amount')).toContain('g/d')
    expect(of('survey', 'cover')).toEqual(['%'])
    expect(of('note', 'text')).toEqual([])
    expect(nitrate.filter(({ name }) => name === 'value').flatMap((one) => unitsFor(one, nitrate))).toContain(
      'mg/L NO3-N',
    )
  })

  it('leaves the unit of an own fact to its own blank', () => {
    const fact = blanks('fact-override')
    const typed = { fact: 'foam.k.tank', low: '0.2', typical: '0.8', high: '3', unit: 'd⁻¹' }
    expect(withUnits(fact, typed, {})).toEqual(typed)
  })
})

it('unit and kit are remembered for each quantity by itself', () => {
  expect(nameToRemember('reading', 'kit', { quantity: 'nitrate' })).toBe('reading nitrate kit')
  expect(nameToRemember('water-change', 'volume', {})).toBe('water-change volume')
})
