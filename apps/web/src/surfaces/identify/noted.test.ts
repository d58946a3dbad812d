import { expect, it } from 'vitest'
import { note, notedIn, nothingNoted, passOver, takeBack, textOf } from './noted.ts'

const slime = note(note(nothingNoted, 'colour', 'brown'), 'form', 'slimy_sheet')

it('what was noted is the same after a way through the address', () => {
  const noted = passOver(slime, 'height')
  const { noted: text, unknown } = textOf(noted)
  expect(notedIn({ noted: text ?? null, unknown: unknown ?? null })).toEqual(noted)
})

it('nothing noted leaves nothing in the address', () => {
  expect(textOf(nothingNoted)).toEqual({ noted: undefined, unknown: undefined })
  expect(notedIn({ noted: null, unknown: null })).toEqual(nothingNoted)
})

it('what is taken back may be asked again, noted or passed over', () => {
  expect(takeBack(slime, 'form')).toEqual(note(nothingNoted, 'colour', 'brown'))
  expect(takeBack(passOver(slime, 'height'), 'height')).toEqual(slime)
})

it('a trait is noted once: the last word holds', () => {
  expect(note(slime, 'colour', 'purple').answers).toEqual({ form: 'slimy_sheet', colour: 'purple' })
  expect(note(passOver(slime, 'colour'), 'colour', 'purple').passedOver).toEqual([])
})

it('an address of another age is read as far as it goes', () => {
  expect(
    notedIn({ noted: 'colour.brown,colour.mauve,taste.salt,__proto__.x', unknown: 'taste,height' }),
  ).toEqual({
    answers: { colour: 'brown' },
    passedOver: ['height'],
  })
})
