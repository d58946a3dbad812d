import { describe, expect, test } from 'vitest'
import { fieldKey } from './field-key.ts'
import type { Key } from './key.ts'
import { posterior, surest } from './posterior.ts'

const chanceIn = (kind: string, answers: Readonly<Record<string, string>>): number =>
  posterior(fieldKey, answers).find(({ key }) => key === kind)?.chance ?? 0

describe('the chances of kinds', () => {
  test('sum to one, whatever was noted', () => {
    for (const answers of [{}, { form: 'ball' }, { form: 'ball', texture: 'slimy', colour: 'purple' }])
      expect(posterior(fieldKey, answers).reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12)
  })

  test('do not depend on the order of what was noted', () => {
    expect(posterior(fieldKey, { form: 'dust_film', colour: 'brown', mainly_on: 'sand' })).toEqual(
      posterior(fieldKey, { mainly_on: 'sand', colour: 'brown', form: 'dust_film' }),
    )
  })

  test('are those of complaints where nothing was noted but the age', () => {
    expect(chanceIn('film_diatom', { age_of_system: 'under_2_months' })).toBeCloseTo(0.3685, 3)
    expect(chanceIn('coralline', { age_of_system: 'over_18_months' })).toBeCloseTo(0.12, 3)
  })

  test('are Bayes by hand for one trait that has no sister: colour', () => {
    // Complaints over 18 months times the chance of purple, of the five that are over the floor and the rest.
    const coralline = 0.12 * 0.551
    const all = fieldKey.kinds.reduce(
      (sum, { key }) =>
        sum +
        fieldKey.frequency(key, { age_of_system: 'over_18_months' }) *
          fieldKey.chance(key, 'colour', 'purple'),
      0,
    )
    expect(chanceIn('coralline', { age_of_system: 'over_18_months', colour: 'purple' })).toBeCloseTo(
      coralline / all,
      12,
    )
  })

  test('never pass the cap, and what is taken off goes to the others', () => {
    const [first] = posterior(fieldKey, {
      form: 'ball',
      squeeze: 'pops_with_fluid',
      cells_microscope: 'one_giant_cell',
    })
    expect(first).toMatchObject({ key: 'bubble', chance: surest })
  })

  test('of dinoflagellates and golden slime rise two- to fourfold on dry rock with readings near nothing', () => {
    // Rule of thumb of keepers (common practice).
    const lean = { nutrient_readings: 'near_nothing', first_rock: 'dry_dead' }
    const odds = (answers: Readonly<Record<string, string>>, kind: string) =>
      chanceIn(kind, answers) / chanceIn('hair_green', answers)
    for (const kind of ['dino', 'chrysophyte']) {
      expect(odds(lean, kind) / odds({}, kind)).toBeGreaterThan(2)
      expect(odds(lean, kind) / odds({}, kind)).toBeLessThan(4)
    }
  })

  test('no answer rules a kind out', () => {
    for (const { chance } of posterior(fieldKey, { cells_microscope: 'glass_shells' }))
      expect(chance).toBeGreaterThan(0)
  })
})

describe('sister traits', () => {
  const key: Key = {
    kinds: [
      { key: 'one', title: 'one' },
      { key: 'other', title: 'other' },
    ],
    traits: ['a', 'b', 'c'].map((name) => ({
      key: name,
      title: name,
      asks: `${name}?`,
      how: '',
      tool: 'eye',
      contact: 'none',
      sisters: 'same',
      states: [
        { key: 'yes', title: 'yes' },
        { key: 'no', title: 'no' },
      ],
    })),
    chance: (kind, _, state) => ((kind === 'one') === (state === 'yes') ? 0.6 : 0.4),
    frequency: () => 1,
    inFrequency: [],
    responses: [],
    lookAlikes: [],
    slime: [],
  }
  const odds = (answers: Readonly<Record<string, string>>): number => {
    const [first, second] = posterior(key, answers)
    return first.chance / second.chance
  }

  test('one counts in full, three together as one and a half', () => {
    expect(odds({ a: 'yes' })).toBeCloseTo(1.5, 10)
    expect(odds({ a: 'yes', b: 'yes', c: 'yes' })).toBeCloseTo(1.5 ** 1.5, 10)
  })
})
