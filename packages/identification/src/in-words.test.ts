import { expect, test } from 'vitest'
import { identify } from './identify.ts'
import { actInWords, findingInWords } from './in-words.ts'

const says = (answers: Readonly<Record<string, string>>, passedOver: readonly string[] = []) => {
  const found = identify(answers, passedOver)
  return [findingInWords(found), actInWords(found)]
}

/** Every question passed over until the key ends. */
function without(answers: Readonly<Record<string, string>>) {
  let passedOver: readonly string[] = []
  for (let at = identify(answers).next; at !== undefined; at = identify(answers, passedOver).next)
    passedOver = [...passedOver, at.key]
  return says(answers, passedOver)
}

test('a kind that is sure is named with what to do about it', () => {
  expect(says({ form: 'ball', colour: 'bright_green', texture: 'rubbery' })).toEqual([
    'It is most likely bubble algae (98\u00a0%).',
    expect.stringMatching(/^Twist off whole\. /),
  ])
})

test('two kinds of one response are both named, and need not be told apart', () => {
  const [finding, act] = says({ form: 'slime_lumps_strings', colour: 'golden_yellow' })
  expect(finding).toMatch(/^It is dinoflagellate mat \(\d+\s%\) or golden slime \(\d+\s%\)\.$/)
  expect(act).toMatch(/^What to do is the same for both\. Gloves and glasses/)
})

test('while the key asks it says how things stand, and that hands stay off slime', () => {
  const [finding, act] = says({ form: 'slimy_sheet', colour: 'brown' })
  expect(finding).toMatch(/^So far: /)
  expect(act).toBe('Hands off until it is known: it may be toxic slime.')
})

test('an end may be open: not sure, and it does not matter yet', () => {
  expect(without({ form: 'slimy_sheet', colour: 'brown' })[1]).toMatch(
    /^Not sure, and it does not matter yet: siphon it .*gloves and glasses on/,
  )
  expect(without({ form: 'short_tuft', colour: 'purple', texture: 'wiry' })).toEqual([
    expect.stringMatching(/^It may be .* or .*\.$/),
    'Not sure, and it does not matter yet: photograph it, and look again in a week.',
  ])
})

test('what speaks for a harmful look-alike is said aloud', () => {
  const [finding] = without({
    form: 'dust_film',
    colour: 'brown',
    slime_strings: 'none',
    height: 'h_under_1_mm',
    mainly_on: 'sand',
    night_retreat: 'clearly_less',
  })
  expect(finding).toMatch(/but what you noted speaks for dinoflagellate mat too\.$/)
})

test('the genus is named where it changes what to do', () => {
  const [finding, act] = says({
    form: 'slime_lumps_strings',
    colour: 'brown',
    night_retreat: 'clearly_less',
    slime_strings: 'long_with_bubble_tip',
    mainly_on: 'rock',
    cells_microscope: 'moving_cells_spin',
    cell_shape: 'drop_on_a_tip',
  })
  expect(finding).toContain('within it most likely a dinoflagellate that swims up')
  expect(finding).toContain('it kills snails and urchins')
  expect(act).toContain('An ultraviolet lamp at night meets it: it leaves for the water by night')
})
