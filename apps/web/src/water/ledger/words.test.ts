import { describe, expect, it } from 'vitest'
import { sentenceText } from '../../figure/sentence.ts'
import { exampleLedger } from '../../fixtures/example-ledger.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import { streamFigure } from './figures.ts'
import { riverOf } from './streams.ts'
import { riverSentence, threeThings } from './words.ts'

const ground = { answer: exampleLedger({ from: 20_390, to: 20_420 }), data: exampleData }
const rivers = [riverOf(ground.answer.ledger, 'N'), riverOf(ground.answer.ledger, 'P')]

describe('the words under the rivers', () => {
  it('say three things, each with its figure', () => {
    const said = threeThings(rivers, ground)
    expect(said).toHaveLength(3)
    for (const sentence of said) expect(sentence.some((part) => typeof part !== 'string')).toBe(true)
  })

  it('say how much the rock gives against the feed', () => {
    // 260 of 380 + 550 µmol P a day, half to one and a half times
    const said = threeThings(rivers, ground).map(sentenceText)
    expect(said).toContain(
      'Rock and sand give the water as much phosphorus as 28 (14 to 42) % of what you feed.',
    )
  })

  it('name the largest way in and out with its mass of nitrogen', () => {
    // 12 800 µmol N/d × 30 d × 14.007 g/mol = 5379 mg
    expect(riverSentence(rivers[0] ?? riverOf(ground.answer.ledger, 'N'), ground)).toBe(
      'Most nitrogen comes in with feed: 5400 (5100 to 5700) mg N. Most leaves as nitrogen gas: 1100 (200 to 2000) mg N.',
    )
  })
})

describe('the derivation of a stream', () => {
  const river = rivers[0] ?? riverOf(ground.answer.ledger, 'N')
  const old = river.exports.find(({ place }) => place.account === 'outside.discarded-water')

  it('puts the values into the formula and names the entries that moved the water', () => {
    if (!old) throw new Error('The example has no discarded water.')
    const { steps, entries } = streamFigure(old, river, ground).derivation()
    expect(steps.at(-1)?.withValues).toBe(
      '630 mg N = 45000 µmol N × 14.007 g/mol ÷ 1000'.replace('45000', '45\u202f000'),
    )
    expect(entries).toEqual(['change-6', 'change-7'])
  })

  it('names a process once that takes from several accounts', () => {
    const { ledger } = ground.answer
    const foamed = ledger.rows.filter(({ to }) => to === 'outside.skimmate')
    const more = {
      ...ground,
      answer: { ...ground.answer, ledger: { ...ledger, rows: [...ledger.rows, ...foamed] } },
    }
    const wider = riverOf(more.answer.ledger, 'N')
    const [once, twice] = [river, wider].map((of) => {
      const foam = of.exports.find(({ place }) => place.account === 'outside.skimmate')
      if (!foam) throw new Error('The example has no skimmate.')
      return streamFigure(foam, of, more)
    })
    expect(twice?.value).toBeCloseTo(2 * (once?.value ?? 0), 6)
    const all = wider.exports.reduce((most, one) => (one.rows.length > most.rows.length ? one : most))
    const [sum] = streamFigure(all, wider, more).derivation().steps
    const titles = sum?.formula.replace('sum over ', '').split(', ') ?? []
    expect(new Set(titles).size).toBe(titles.length)
    expect(twice?.derivation().steps).toHaveLength(1)
  })

  it('carries the facts of the process with source and provenance', () => {
    const foam = river.exports.find(({ place }) => place.account === 'outside.skimmate')
    if (!foam) throw new Error('The example has no skimmate.')
    expect(streamFigure(foam, river, ground).derivation().processes).toMatchObject([
      { process: 'foam', facts: [{ id: 'foam.k.tank', provenance: 'estimate' }] },
    ])
  })
})
