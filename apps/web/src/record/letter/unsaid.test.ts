import { expect, it } from 'vitest'
import { gone, said } from './unsaid.ts'

const unsaid = ['feeds 1, amount', 'feeds 2, amount', 'rock 1, mass', 'evaporation']

it('what was said of one place leaves the others unsaid', () => {
  expect(said(unsaid, ['feeds', 0, 'amount'])).toEqual(['feeds 2, amount', 'rock 1, mass', 'evaporation'])
})

it('where a food is taken away, the next one moves up with what was not said of it', () => {
  expect(gone(unsaid, ['feeds', 0])).toEqual(['feeds 1, amount', 'rock 1, mass', 'evaporation'])
})
