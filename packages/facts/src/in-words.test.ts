import { expect, test } from 'vitest'
import { fact, facts, howKnown, referencesOf } from './index.ts'

test('how a fact is known is told in sentences, its note among them', () => {
  expect(howKnown(fact('nit.nob.inhib_nh3'))).toBe(
    'Recalled from its source, and not looked up again. Explains the long nitrite peak after an overdose of ammonia.',
  )
  expect(howKnown(fact('den.inside_rock_share'))).toMatch(/^Estimate: in coastal sediment/)
  expect(howKnown(fact('fish.retain_p.adult'))).toMatch(/^An estimate made here\. By analogy/)
  expect(facts().filter((one) => !/[.?!]$/.test(howKnown(one)))).toEqual([])
})

test('a reference has authors, year, title, place and how much of it was seen, with one stop after each', () => {
  expect(referencesOf(fact('den.ks_sand'))[0]?.text).toBe(
    'Cook, Kessler & Eyre (2016). Does denitrification occur within porous carbonate sand grains? Biogeosciences Discuss; final 2017, Biogeosciences 14:4061. Its abstract was seen.',
  )
  expect(referencesOf(fact('alg.nitrate_wait'))[0]?.doi).toBe('10.1007/s10811-019-1748-7')
  const texts = facts().flatMap((one) => referencesOf(one).map(({ text }) => text))
  expect(texts.filter((text) => /[.?!]{2}/.test(text))).toEqual([])
})
