import { trait } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { cautionsFor } from './cautions.ts'
import { identify } from './identify.ts'

const cautionsOf = (answers: Readonly<Record<string, string>>, passedOver: readonly string[] = []) =>
  identify(answers, passedOver).cautions.map(({ key }) => key)

const slimeThatSwims = {
  form: 'slime_lumps_strings',
  colour: 'brown',
  slime_strings: 'long_with_bubble_tip',
  night_retreat: 'clearly_less',
}

describe('the end', () => {
  test('comes when the measures agree, though dinoflagellate and chrysophyte are still both possible', () => {
    const { ends, best, chances, questions } = identify({
      form: 'slime_lumps_strings',
      colour: 'golden_yellow',
    })
    expect(ends).toBe('agreed')
    expect(best.response.key).toBe('feed_the_water')
    expect(chances[1].chance).toBeGreaterThan(0.2)
    expect(questions).toEqual([])
  })

  test('may be open: what a keeper cannot look at is not asked for ever', () => {
    const all = identify({ form: 'short_tuft' }).questions.map(({ trait }) => trait.key)
    let passedOver = all
    let end = identify({ form: 'short_tuft' }, passedOver)
    while (end.next !== undefined) {
      passedOver = [...passedOver, end.next.key]
      end = identify({ form: 'short_tuft' }, passedOver)
    }
    expect(end).toMatchObject({ ends: 'open', questions: [] })
  })

  test('an answer taken back leaves no trace', () => {
    const before = identify({ form: 'loose_hair' })
    const { colour: _, ...without } = { form: 'loose_hair', colour: 'bright_green' }
    expect(identify(without)).toEqual(before)
  })
})

describe('brown dust on the sand', () => {
  const dust = {
    form: 'dust_film',
    colour: 'brown',
    slime_strings: 'none',
    height: 'h_under_1_mm',
    mainly_on: 'sand',
  }

  test('is not called diatoms before somebody looked for dinoflagellates', () => {
    expect(identify(dust)).toMatchObject({ ends: 'not yet', next: { key: 'night_retreat' } })
    expect(identify(dust, ['night_retreat'])).toMatchObject({ next: { key: 'cells_microscope' } })
    expect(identify({ ...dust, night_retreat: 'same' })).toMatchObject({ ends: 'agreed' })
  })

  test('that is gone at dawn asks for the microscope, and hands stay off', () => {
    const { handsOff, next, suspect } = identify({ ...dust, night_retreat: 'clearly_less' })
    expect(suspect?.key).toBe('dino')
    expect(next?.key).toBe('cells_microscope')
    expect(handsOff).toBe(true)
    expect(cautionsOf({ ...dust, night_retreat: 'clearly_less' })).toContain('palytoxin')
  })
})

describe('cautions', () => {
  test('slime is toxic until it is known, and that stands first', () => {
    expect(cautionsOf({ form: 'slime_lumps_strings', colour: 'brown' })[0]).toBe('palytoxin')
  })

  test('where a bit is handled: mains, what comes loose, and no release', () => {
    const tuft = { form: 'short_tuft', colour: 'wine_red', mainly_on: 'rock' }
    const { next } = identify(tuft)
    expect(next?.contact).toBe('touch')
    expect(cautionsOf(tuft)).toEqual(['mains_near_water', 'remove_loosened_algae', 'do_not_release'])
  })

  test.each(['calcified', 'peroxide_drop'])('%s is looked at outside the tank', (asked) => {
    const { chances } = identify({ form: 'hard_crust' })
    expect(cautionsFor(chances, false, trait(asked), []).map(({ key }) => key)).toContain('acid_or_bleach')
  })

  test('stand before what is done by hand too', () => {
    const green = { form: 'ball', colour: 'bright_green' }
    expect(identify(green).ends).toBe('agreed')
    expect(cautionsOf(green)).toEqual([
      'siphon_by_mouth',
      'mains_near_water',
      'remove_loosened_algae',
      'do_not_release',
    ])
  })

  test('a look that needs no hand needs no caution', () => {
    expect(cautionsOf({ form: 'feather' })).not.toContain('mains_near_water')
  })

  test('stand before a look that nobody asked for but the keeper wants', () => {
    const { next, cautions } = identify({ form: 'feather' }, [], 'calcified')
    expect(next?.key).toBe('calcified')
    expect(cautions.map(({ key }) => key)).toContain('acid_or_bleach')
  })

  test('a hose is never started by mouth', () => {
    const { cautions } = identify({ form: 'slimy_sheet' }, [], 'siphon_behaviour')
    expect(cautions.map(({ key }) => key)).toContain('siphon_by_mouth')
  })

  test('what may be a polyp is not scrubbed', () => {
    const animal = { form: 'animal_body', texture: 'sponge_like', colour: 'white_clear_grey' }
    expect(identify(animal).best.response.key).toBe('find_out')
    expect(cautionsOf(animal)).toEqual(['palytoxin', 'hot_rock'])
  })

  test('the lamp that meets what swims up is not looked into', () => {
    const swims = { ...slimeThatSwims, cell_shape: 'drop_on_a_tip', mainly_on: 'rock' }
    expect(identify(swims).finer?.best.response.key).toBe('lamp_at_night')
    expect(cautionsOf(swims)).toContain('ultraviolet')
  })
})

describe('finer kinds', () => {
  const stringy = {
    form: 'slime_lumps_strings',
    colour: 'brown',
    slime_strings: 'long_with_bubble_tip',
    night_retreat: 'clearly_less',
    gas_bubbles_afternoon: 'many_trapped',
  }

  test('are asked for once the kind is settled, by what was noted already', () => {
    const { finer } = identify(stringy)
    expect(finer?.chances[0].key).toBe('dino_ostreopsis')
    expect(finer?.best.response.key).toBe('lamp_at_night')
  })

  test('come after the look that parts the kind from those it is taken for', () => {
    const slime = { form: 'slime_lumps_strings', colour: 'brown', gas_bubbles_afternoon: 'many_trapped' }
    expect(identify(slime).next?.key).toBe('night_retreat')
    expect(identify(slime, ['night_retreat']).next?.key).toBe('cells_microscope')
    expect(identify({ ...slime, night_retreat: 'clearly_less' }).next?.key).toBe('mainly_on')
  })

  test('dinoflagellates that lie in the sand are met by leaving the sand alone', () => {
    const { finer } = identify({
      ...stringy,
      slime_strings: 'none',
      mainly_on: 'sand',
      cells_microscope: 'moving_cells_spin',
      cell_shape: 'flat_small_head',
    })
    expect(finer?.best.response.key).toBe('leave_the_sand')
  })

  test('hair of cyanobacteria is told from sheets by its form alone', () => {
    const { finer } = identify({
      form: 'loose_hair',
      colour: 'blue_green_black',
      cells_microscope: 'fine_threads_no_nucleus',
      texture: 'slimy',
    })
    expect(finer?.chances[0].key).toBe('cyano_lyngbya')
  })

  test('are not asked for where all are met in the same way', () => {
    expect(identify({ form: 'ball', squeeze: 'pops_with_fluid' }).finer).toBeUndefined()
  })
})

describe('look-alikes', () => {
  test('stand with the test that parts them, which waits while hands stay off', () => {
    const { lookAlikes } = identify({ form: 'slimy_sheet', colour: 'brown' })
    expect(lookAlikes.map(({ from }) => from.key)).toContain('dino')
    for (const { test: parts, waits } of lookAlikes) {
      expect(parts.length).toBeGreaterThan(20)
      if (/Rub|Squeeze|nail|Vinegar/.test(parts)) expect(waits).toBe(true)
    }
  })

  test('short red turf and mixed turf are parted by a close look', () => {
    const { lookAlikes } = identify({ form: 'short_tuft', colour: 'wine_red', texture: 'wiry' })
    expect(lookAlikes[0]).toMatchObject({ from: { key: 'turf' }, waits: false, looked: false })
  })
})
