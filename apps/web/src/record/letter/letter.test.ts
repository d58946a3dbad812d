import { grazer, taste } from '@holdfast/facts'
import { describe, expect, it } from 'vitest'
import { understood, withUnit } from './blank.ts'
import { blanksOf, paragraphsOf } from './blanks-of.ts'
import * as holds from './holds.ts'
import { begun, confirmed, filled, read, textAt, unsaidOf, withMore, without } from './letter.ts'
import type { Letter } from './paragraph.ts'
import { placeOf } from './path.ts'
import { starts } from './starts.ts'

const [small, middle] = starts
if (!small || !middle) throw new Error('The letter has starting points.')

const blankAt = (letter: Letter, place: string) => {
  const blank = blanksOf(letter).find(({ path }) => placeOf(path) === place)
  if (!blank) throw new Error(`no blank at ${place}`)
  return blank
}
const systemOf = (letter: Letter) => {
  const found = read(letter)
  if (!found.ok) throw new Error(JSON.stringify(found.issues))
  return found.system
}

describe.each(starts)('the starting point "$title"', (start) => {
  it('is a system as it stands, and says so of nothing in it', () => {
    const letter = begun(start, 'Europe/Lisbon')
    const system = systemOf(letter)
    expect(system.feeds.map(({ untold }) => untold)).toEqual(system.feeds.map(() => true))
    expect(unsaidOf(letter)).toHaveLength(blanksOf(letter).length)
  })

  it('has something usual in every blank, and its own numbers among what is usual', () => {
    const letter = begun(start, 'Europe/Lisbon')
    for (const blank of blanksOf(letter)) {
      const { holds: of, label } = blank
      expect(textAt(letter, blank), label).not.toBe('')
      if (typeof of === 'string' || 'length' in of) continue
      const { value = Number.NaN } = understood(textAt(letter, blank), of)
      expect(value, label).toBeGreaterThanOrEqual(of.usual[0])
      expect(value, label).toBeLessThanOrEqual(of.usual[1])
    }
  })
})

describe('a blank', () => {
  const letter = begun(middle, 'Europe/Lisbon')

  it('takes what is typed as it was typed, and is said from then on', () => {
    const next = filled(letter, blankAt(letter, 'vessels 1, water'), '80 US gal')
    expect(systemOf(next).vessels[0]?.volume_L).toBeCloseTo(302.8, 1)
    expect(textAt(next, blankAt(next, 'vessels 1, water'))).toBe('80 US gal')
    expect(unsaidOf(next)).not.toContain('vessels 1, water')
    expect(unsaidOf(next)).toHaveLength(unsaidOf(letter).length - 1)
  })

  it('gives a bare figure the unit of its place', () => {
    expect(withUnit('300', holds.volume)).toBe('300 L')
    expect(withUnit('2,5', holds.fed)).toBe('2,5 g/d')
    expect(withUnit('80 US gal', holds.volume)).toBe('80 US gal')
  })

  it('asks which gallon is meant', () => {
    expect(understood('50 gal', holds.volume).asks?.options.map(({ answer }) => answer)).toEqual([
      '50 US gal',
      '50 imp gal',
    ])
  })

  it('says what another unit comes to', () => {
    expect(understood('78 °F', holds.temperature).means).toBe('25.6 °C')
    expect(understood('1 oz', holds.media).means).toBe('28.3 g')
  })

  it('of a ration is unknown to the model until it is said, or said to be right', () => {
    const [first, second] = ['feeds 1, amount', 'feeds 2, amount']
    const half = filled(letter, blankAt(letter, first), '3 g/d')
    expect(systemOf(half).feeds.map(({ untold }) => untold)).toEqual([undefined, true])
    const whole = confirmed(half, [blankAt(half, second)])
    expect(systemOf(whole).feeds.map(({ untold }) => untold)).toEqual([undefined, undefined])
  })

  it('that cannot be read is an issue of its place, and what was typed stays', () => {
    const next = filled(letter, blankAt(letter, 'rock 1, mass'), 'two stones')
    const found = read(next)
    expect(new Set(found.ok ? [] : found.issues.map(({ where }) => where))).toEqual(new Set(['rock 1, mass']))
    expect(textAt(next, blankAt(next, 'rock 1, mass'))).toBe('two stones')
  })

  it('of a grazer brings name and body of the animal along', () => {
    const next = filled(letter, blankAt(letter, 'animals 2, taxon'), 'Mespilia globulus')
    expect(systemOf(next).animals[1]).toMatchObject({ taxon: 'Mespilia globulus', count: 12, mass_g: 45 })
  })
})

describe('a sentence', () => {
  const letter = begun(small, 'Europe/Lisbon')

  it('appears when it matters, and nothing is said of it yet', () => {
    const runs = paragraphsOf(letter).find(({ title }) => title === 'What runs')
    const skimmer = runs?.more.find(({ words }) => words === 'skimmer')
    if (!skimmer) throw new Error('no skimmer is offered')
    const next = withMore(letter, skimmer)
    expect(systemOf(next).equipment.map(({ kind }) => kind)).toContain('skimmer')
    expect(unsaidOf(next)).toContain('equipment 2, rated for')
  })

  it('about a surface that is not there goes with the algae on it', () => {
    const sentence = paragraphsOf(letter)
      .flatMap(({ sentences }) => sentences)
      .find(({ key }) => key === 'surface glass')
    if (!sentence) throw new Error('no sentence about glass')
    const system = systemOf(without(letter, sentence))
    expect(system.surfaces.map(({ id }) => id)).not.toContain('glass')
    expect(system.algae).toEqual([])
  })
})

describe('an animal of one’s own', () => {
  const moreOf = (letter: Letter, words: string) => {
    const found = paragraphsOf(letter)
      .flatMap(({ more }) => more)
      .find((one) => one.words === words)
    if (!found) throw new Error(`nothing more about ${words}`)
    return found
  }
  const described = () => {
    const letter = withMore(
      begun(middle, 'Europe/Lisbon'),
      moreOf(begun(middle, 'Europe/Lisbon'), 'an animal that your lists do not have'),
    )
    return filled(letter, blankAt(letter, 'own animals 1, taxon'), 'Grey blenny')
  }

  it('is named, likened, and told apart where it differs', () => {
    let letter = described()
    for (const words of ['least tank of Grey blenny', 'appetite of Grey blenny'])
      letter = withMore(letter, moreOf(letter, words))
    letter = filled(letter, blankAt(letter, 'own animals 1, least glass'), '100 US gal')
    letter = withMore(letter, moreOf(letter, 'taste of Grey blenny for green hair algae'))
    const { own_animals: own = [] } = systemOf(letter)
    expect(own).toHaveLength(1)
    expect(own[0]).toMatchObject({
      taxon: 'Grey blenny',
      like: 'Salarias fasciatus',
      eats_g_per_day: grazer('Salarias fasciatus')?.consumption.typical,
      tastes: { hair_green: taste('Salarias fasciatus', 'hair_green').preference },
    })
    expect(own[0]?.least_volume_L).toBeCloseTo(378.5, 1)
  })

  it('is among those that may graze here, and its name is not lost with its description', () => {
    let letter = withMore(described(), moreOf(described(), 'an animal that grazes'))
    const place = `animals ${letter.animals?.length}, taxon`
    letter = filled(letter, blankAt(letter, place), 'Grey blenny')
    expect(systemOf(letter).animals.at(-1)).toMatchObject({ taxon: 'Grey blenny', kind: 'Grey blenny' })
    const gone = without(letter, {
      key: '',
      pieces: [],
      removes: { path: ['own animals', 0], words: '' },
    })
    const { holds: choices } = blankAt(gone, place)
    expect(choices).toContainEqual({ value: 'Grey blenny', words: 'Grey blenny (nobody described it)' })
  })

  it('is no system while its name is that of another', () => {
    const taken = filled(described(), blankAt(described(), 'own animals 1, taxon'), 'Trochus histrio')
    expect(read(taken)).toMatchObject({
      ok: false,
      issues: [{ where: 'own animals 1, taxon', got: '"Trochus histrio" is the name of another' }],
    })
  })
})
