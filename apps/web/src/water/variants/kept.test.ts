import { describe, expect, it } from 'vitest'
import type { Settings } from '../settings.ts'
import { keepVariants, type Variant, variantsKept, without, withVariant } from './kept.ts'

const set = (feed_g: number): Settings => ({
  feed_g,
  water_L: 30,
  water_days: 14,
  media_g: 0,
  media_days: 60,
})

function all(...names: readonly string[]): readonly Variant[] {
  return names.reduce<readonly Variant[]>((before, name, i) => {
    const next = withVariant(before, name, set(i))
    if ('issue' in next) throw new Error(next.issue)
    return next.variants
  }, [])
}

function storeWith(text?: string) {
  const held = new Map<string, string>(text === undefined ? [] : [['holdfast.variants.reef', text]])
  return {
    length: held.size,
    key: () => null,
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, value: string) => void held.set(name, value),
    removeItem: (name: string) => void held.delete(name),
  }
}

describe('variants', () => {
  it('have letters in order, and a letter that is given back goes to the next one', () => {
    const three = all('less feed', 'more water', 'both')
    expect(three.map(({ mark }) => mark)).toEqual(['A', 'B', 'C'])
    const next = withVariant(without(three, 'B'), 'media', set(9))
    expect('variants' in next && next.variants.map(({ mark, name }) => [mark, name])).toEqual([
      ['A', 'less feed'],
      ['B', 'media'],
      ['C', 'both'],
    ])
  })

  it('are refused in words: without a name, twice the same name or levers, or a fourth', () => {
    const two = all('less feed', 'more water')
    const issue = (name: string, feed: number, variants: readonly Variant[] = two) => {
      const next = withVariant(variants, name, set(feed))
      return 'issue' in next ? next.issue : undefined
    }
    expect(issue(' ', 5)).toContain('Name: nothing is typed.')
    expect(issue('less feed', 5)).toContain('"less feed" is kept already')
    expect(issue('other', 1)).toContain('"more water" has the levers in the same places')
    expect(issue('fourth', 5, all('a', 'b', 'c'))).toContain('Remove one first.')
    expect(issue('other', 5)).toBeUndefined()
  })

  it('come back from the browser as they were kept, and what is no variant is left out', () => {
    const store = storeWith()
    expect(keepVariants('reef', all('less feed'), store)).toBe(true)
    expect(variantsKept('reef', store)).toEqual(all('less feed'))
    expect(variantsKept('reef', storeWith('[{"mark":"A","name":"x","set":{"feed_g":"a lot"}}]'))).toEqual([])
    expect(variantsKept('reef', storeWith('no list'))).toEqual([])
  })
})
