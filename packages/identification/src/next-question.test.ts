import { trait, traits } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { identify } from './identify.ts'
import type { Answers } from './key.ts'

const asked = (answers: Answers, passedOver: readonly string[] = []) =>
  identify(answers, passedOver).questions.map((question) => question.trait)

/** What a keeper notes of a brown slime of which no eye says what it is. */
const brownSlime: Answers = { colour: 'brown', form: 'slimy_sheet' }

const everyShapeAndColour = trait('form').states.flatMap((form) =>
  trait('colour').states.map((colour) => identify({ form: form.key, colour: colour.key })),
)

describe('the next question', () => {
  test('is for the eye where nothing is known yet', () => {
    expect(identify({}).next).toMatchObject({ key: 'form', tool: 'eye' })
  })

  test('is never one that was answered or passed over', () => {
    const answers = { form: 'short_tuft', colour: 'wine_red' }
    const keys = asked(answers, ['height', 'texture']).map(({ key }) => key)
    for (const gone of ['form', 'colour', 'height', 'texture']) expect(keys).not.toContain(gone)
    expect(keys.length).toBeGreaterThan(0)
  })

  test('is never smell, whatever was noted', () => {
    for (const { questions } of everyShapeAndColour)
      expect(questions.map((one) => one.trait.key)).not.toContain('smell')
  })

  test('smell is taken where it is told', () => {
    const without = identify(brownSlime).chances.find(({ key }) => key === 'cyano')?.chance ?? 1
    const told = identify({ ...brownSlime, smell: 'earthy_musty' }).chances
    expect(told.find(({ key }) => key === 'cyano')?.chance).toBeGreaterThan(without)
  })
})

describe('while it may be slime', () => {
  test('nothing is proposed that is touched, blown, rubbed or dried', () => {
    const off = everyShapeAndColour.filter(({ handsOff }) => handsOff)
    expect(off.length).toBeGreaterThan(20)
    for (const { questions } of off) expect(questions.map((one) => one.trait.contact)).not.toContain('touch')
  })

  test('the hose waits until nothing is left that only looks', () => {
    const looks = traits().filter(({ contact }) => contact === 'none' || contact === 'drop')
    expect(asked(brownSlime).map(({ contact }) => contact)).not.toContain('hose')
    expect(
      asked(
        brownSlime,
        looks.map(({ key }) => key),
      ).map(({ key }) => key),
    ).toEqual(['siphon_behaviour'])
  })

  test('the look before the lights come on and the microscope are worth asking of a brown slime', () => {
    expect(asked(brownSlime).map(({ key }) => key)).toEqual(
      expect.arrayContaining(['night_retreat', 'cells_microscope']),
    )
  })
})

test('a microscope is not asked for among kinds that hands tell apart', () => {
  for (const answers of [{ form: 'short_tuft', colour: 'dark_green' }, { form: 'feather' }, { form: 'ball' }])
    expect(asked(answers).map(({ tool }) => tool)).not.toContain('microscope')
})
