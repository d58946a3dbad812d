import { grazer } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { stepsOf } from './steps.ts'

const comers = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts).flatMap(([taxon, count]) => {
    const animal = grazer(taxon)
    return animal ? [{ animal, count }] : []
  })

test('snails come before the urchin, the blenny before the tang, and many of a kind in two lots', () => {
  const steps = stepsOf(
    comers({ 'Zebrasoma scopas': 1, 'Ecsenius bicolor': 1, 'Mespilia globulus': 1, 'Trochus histrio': 8 }),
    21,
  )
  const dayOf = (taxon: string): readonly number[] =>
    steps
      .filter(({ animals }) => animals.some((one) => one.taxon === taxon))
      .map(({ after_days }) => after_days)
  expect(dayOf('Trochus histrio')).toEqual([0, 21])
  expect(dayOf('Mespilia globulus')).toEqual([21])
  expect(dayOf('Zebrasoma scopas')[0]).toBeGreaterThan(dayOf('Ecsenius bicolor')[0])
  expect(steps.flatMap(({ animals }) => animals).reduce((sum, { count }) => sum + count, 0)).toBe(11)
})

test('who needs nobody ahead comes at once', () => {
  expect(stepsOf(comers({ 'Trochus histrio': 2 }), 21)).toEqual([
    { after_days: 0, animals: [{ taxon: 'Trochus histrio', count: 2 }] },
  ])
})
