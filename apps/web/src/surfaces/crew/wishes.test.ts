import { expect, test } from 'vitest'
import { textOf, tick, tickedIn, wishesOf } from './wishes.ts'

const nothing = tickedIn(() => null)

test('an animal is liked or never wanted, not both, and ticked twice it is neither', () => {
  const liked = tick(nothing, 'liked', 'Trochus histrio')
  const never = tick(liked, 'never', 'Trochus histrio')
  expect(liked.liked).toEqual(['Trochus histrio'])
  expect(never).toMatchObject({ liked: [], never: ['Trochus histrio'] })
  expect(tick(never, 'never', 'Trochus histrio')).toEqual(nothing)
})

test('what was ticked reads the same out of the address, and unknown animals are passed by', () => {
  const ticked = { ...tick(nothing, 'never', 'Mespilia globulus'), withCaution: true, budget: '80' }
  const text = textOf(ticked)
  expect(tickedIn((name) => text[name] ?? null)).toEqual(ticked)
  expect(tickedIn((name) => (name === 'like' ? 'Nobody known' : null))).toEqual(nothing)
})

test('nobody new comes but those that are liked, and nobody at all where none is', () => {
  const liked = tick({ ...nothing, onlyLiked: true }, 'liked', 'Trochus histrio')
  const text = textOf(liked)
  expect(tickedIn((name) => text[name] ?? null)).toEqual(liked)
  expect(wishesOf(liked)).toEqual({ wishes: { liked: ['Trochus histrio'], only: ['Trochus histrio'] } })
  expect(wishesOf({ ...nothing, onlyLiked: true })).toEqual({ wishes: { only: [] } })
})

test('an animal of the keeper’s own is read out of the address', () => {
  const own = [{ taxon: 'Grey blenny', like: 'Salarias fasciatus' }]
  const read = (name: string) => (name === 'like' ? 'Grey blenny' : null)
  expect(tickedIn(read, own).liked).toEqual(['Grey blenny'])
  expect(tickedIn(read).liked).toEqual([])
})

test('a budget in words names the field and what is accepted, and an empty one is no limit', () => {
  expect(wishesOf({ ...nothing, budget: 'much' })).toEqual({
    issue: 'The budget: “much” is no number of US dollars. Type 0 or more, or leave it empty for no limit.',
  })
  expect(wishesOf({ ...nothing, budget: '12,5' })).toEqual({ wishes: { budget_usd: 12.5 } })
  expect(wishesOf(nothing)).toEqual({ wishes: {} })
})
