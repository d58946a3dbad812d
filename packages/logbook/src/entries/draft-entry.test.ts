import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'

import { issueInWords } from '../issue.ts'
import { readSystemFile } from '../system-file/read-system-file.ts'
import { hall } from '../testing/hall.ts'
import type { About, Typed } from './blank.ts'
import { blanksOf, draftEntry, sayEntry, typedOf } from './draft-entry.ts'
import type { Entry, EntryKind } from './entry.ts'
import { equipmentChange } from './equipment-change.ts'
import { kinds } from './index.ts'
import { readEntry } from './read-entry.ts'
import { survey } from './survey.ts'

const file = readSystemFile(JSON.stringify(hall))
if (!file.ok) throw new Error('the reef in the hall does not read')
const about: About = { system: file.system }

const folder = new URL('./samples/', import.meta.url)
const samples = readdirSync(folder).map((name): Entry => {
  const read = readEntry(JSON.parse(readFileSync(new URL(name, folder), 'utf8')))
  if (!read.ok) throw new Error(`${name}: ${read.issues.map(issueInWords).join('\n')}`)
  return read.entry
})
const filledByHand = samples.filter(({ kind }) => blanksOf(kind).length > 0)
const withoutTexts = ({ text: _, typed: __, ...body }: Record<string, unknown>): unknown => body

const wordsOf = (kind: EntryKind, typed: Typed): readonly string[] => {
  const draft = draftEntry(kind, typed, about)
  return draft.ok ? [] : draft.issues.map(issueInWords)
}
const questionsOf = (kind: EntryKind, typed: Typed): readonly (readonly string[])[] => {
  const draft = draftEntry(kind, typed, about)
  return draft.ok ? [] : draft.questions.map(({ options }) => options.map(({ value }) => value))
}

test('only what the program writes itself has no blanks', () => {
  const without = kinds.filter(({ name }) => blanksOf(name, about).length === 0).map(({ name }) => name)
  expect(without).toEqual(['attachment', 'system', 'shown-outlook', 'crew-plan', 'retraction'])
  expect(wordsOf('retraction', { of: 'entry' })).toEqual([
    'Taken back: it has no blanks to fill in. Entries that a person fills in. Choose another kind.',
  ])
})

test.each(filledByHand.map((entry) => [`${entry.kind} v${entry.v}`, entry] as const))(
  'a correction of a %s begins with texts that say the same again',
  (_, entry) => {
    const again = draftEntry(entry.kind, typedOf(entry), about)
    expect(again).toMatchObject({ ok: true })
    expect(again.ok && withoutTexts(again.body)).toEqual(withoutTexts(entry.body))
    const fills = kinds.find(({ name }) => name === entry.kind)?.fills(entry.body as never)
    const anew = draftEntry(entry.kind, fills ?? {}, about)
    expect(anew.ok && withoutTexts(anew.body)).toEqual(withoutTexts(entry.body))
  },
)

test('a correction begins with the very number, whatever it is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 1, noNaN: true }), (cover) => {
      const body = { surface: 'rock face', algae: 'hair_green', cover, text: '' }
      const draft = draftEntry('survey', survey.fills(body), about)
      expect(draft.ok && draft.body.cover).toBe(cover)
    }),
  )
})

test.each(filledByHand.map((entry) => [entry.kind, entry] as const))(
  'the blanks of a %s have a label and a hint, names of their own, and choices where one chooses',
  (kind, entry) => {
    const blanks = blanksOf(kind, about, typedOf(entry))
    expect(new Set(blanks.map(({ name }) => name)).size).toBe(blanks.length)
    for (const { name, label, hint, holds, choices = [], open } of blanks) {
      expect([name, label, hint].every((words) => words.length > 0)).toBe(true)
      expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/)
      if (holds === 'choice') expect(choices.length > 0 || open === true).toBe(true)
    }
  },
)

test.each(filledByHand.map((entry) => [entry.kind, entry] as const))(
  'a %s whose blanks are empty names each one that is needed',
  (kind) => {
    const needed = blanksOf(kind, about).filter(({ required }) => required)
    const draft = draftEntry(kind, {}, about)
    expect(draft.ok ? [] : draft.issues.map(({ where }) => where)).toEqual(
      kind === 'light-change' ? ['Change of light'] : needed.map(({ label }) => label),
    )
  },
)

test.each(samples.map((entry) => [`${entry.kind} v${entry.v}`, entry] as const))(
  'a %s is said in one line',
  (_, entry) => {
    expect(sayEntry(entry)).toMatch(/^.{3,200}$/)
  },
)

test('a figure without a unit is refused, with one without a form it is asked; nothing is guessed', () => {
  expect(wordsOf('reading', { quantity: 'nitrate', value: '5' })).toEqual([
    'Nitrate: "5" has no unit. Give nitrate, such as 5 mg/L NO3, 1.1 mg/L NO3-N or <0.5 mg/L NO3.',
  ])
  expect(questionsOf('reading', { quantity: 'nitrate', value: '5 mg/L' })).toEqual([
    ['5 mg/L NO3', '5 mg/L NO3-N'],
  ])
})

test('every option of a question is an answer to it', () => {
  for (const value of questionsOf('reading', { quantity: 'salinity', value: '1.026 SG' })[0])
    expect(wordsOf('reading', { quantity: 'salinity', value })).toEqual([])
})

test('1 mg/L of nitrate nitrogen is 4.427 mg/L of nitrate, and what was typed is kept', () => {
  const draft = draftEntry('reading', { quantity: 'nitrate', value: '1 mg/L NO3-N', kit: 'colour kit' })
  expect(draft).toMatchObject({
    ok: true,
    body: { text: '1 mg/L NO3-N', form: 'NO3-N', kit: 'colour kit', typed: { value: '1 mg/L NO3-N' } },
  })
  expect(draft.ok && draft.body.value).toBeCloseTo(4.4266, 4)
})

test('the unit of a blank counts where the figure has none', () => {
  const typed = { quantity: 'alkalinity', unit: 'dKH' }
  const drafts = ['8.4', '3 meq/L'].map((value) => draftEntry('reading', { ...typed, value }))
  expect(drafts.map((draft) => draft.ok && draft.body.value?.toFixed(2))).toEqual(['3.00', '3.00'])
})

test('below the first mark is a limit, nothing seen has none, and a span keeps both ends', () => {
  const bodies = ['<0.03 mg/L PO4', 'n.d.', '0.03-0.05 mg/L PO4', '>1 mg/L PO4', '~0.1 mg/L PO4'].map(
    (value) => {
      const draft = draftEntry('reading', { quantity: 'phosphate', value })
      return draft.ok ? draft.body : draft.issues
    },
  )
  expect(bodies).toMatchObject([
    { value: 0.03, belowDetection: true },
    { value: null, belowDetection: true },
    { value: 0.04, belowDetection: false, interval: [0.03, 0.05] },
    { value: 1, belowDetection: false, aboveRange: true },
    { value: 0.1, belowDetection: false, approximate: true },
  ])
})

test('a nought of a colour kit is asked about; one of a probe is a nought', () => {
  expect(questionsOf('reading', { quantity: 'phosphate', value: '0 mg/L PO4' })).toEqual([['not detected']])
  expect(draftEntry('reading', { quantity: 'temperature', value: '0 °C' })).toMatchObject({ ok: true })
})

// SG 1.026 at 25/25 °C is S 34.5, at 20/4 °C 36.6 (EOS-80; UNESCO 1983, computed).
test.each([
  ['1.026 SG 25/25 °C', 34.5],
  ['1.026 SG 20/4 °C', 36.6],
  ['34.5 psu', 34.5],
])('a salinity of %s is %s', (value, expected) => {
  const draft = draftEntry('reading', { quantity: 'salinity', value })
  expect(draft.ok && draft.body.value?.toFixed(1)).toBe(expected.toFixed(1))
})

test('all that is wrong is said at once, with what is near a slip of the pen', () => {
  expect(
    wordsOf('water-change', { volume: '60 foo', nitrat: '2 mg/L NO3', phosphate: '0.1 mg/L PO4' }),
  ).toEqual([
    'Entry: it has no "nitrat". There is: volume, nitrate, phosphate. Did you mean "nitrate"?',
    'Volume changed: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.',
    expect.stringMatching(/^Nitrate of the new water: it is empty/),
  ])
})

test('what hangs on the description is chosen from it', () => {
  const blank = (kind: EntryKind, name: string) => blanksOf(kind, about).find((one) => one.name === name)
  expect(blank('survey', 'surface')?.choices).toEqual([{ value: 'rock face', words: 'rock face' }])
  expect(blank('feeding', 'feed')?.choices?.map(({ value }) => value)).toEqual(['dry pellet'])
  expect(wordsOf('survey', { surface: 'rok face', algae: 'hair_green', cover: '12 %' })).toEqual([
    'Surface: "rok face" is not known here. Known: rock face. Did you mean "rock face"?',
  ])
  const dino = draftEntry('survey', { surface: 'rock face', algae: 'something brown', cover: '12 %' }, about)
  expect(dino).toMatchObject({ ok: true, body: { algae: 'something brown', cover: 0.12 } })
})

test('a share above 1 without a sign is asked about, a mass a day may say so', () => {
  const typed = { surface: 'rock face', algae: 'hair_green' }
  expect(questionsOf('survey', { ...typed, cover: '12' })).toEqual([['12 %']])
  expect(questionsOf('survey', { ...typed, cover: '1' })).toEqual([['1 %', '100 %']])
  expect(wordsOf('survey', { ...typed, cover: '130 %' })).toHaveLength(1)
  const drafts = ['4 g/d', '4 g', '4000 mg per day', '4 g a day'].map((amount) =>
    draftEntry('feeding', { amount }),
  )
  expect(drafts.map((draft) => draft.ok && draft.body.g_per_day)).toEqual([4, 4, 4, 4])
})

test('a blackout is a change of light to no hours; a day has 24', () => {
  expect(draftEntry('light-change', { hours: '0 h' }, about)).toMatchObject({
    ok: true,
    body: { light_h_per_day: 0 },
  })
  expect(wordsOf('light-change', { hours: '25' })).toHaveLength(1)
})

test('an animal that died is asked for its body, and one that was added is not', () => {
  const typed = { taxon: 'Trochus histrio', count: '3' }
  expect(wordsOf('animals', { ...typed, change: 'died' })[0]).toMatch(
    /^Was the body taken out\?: it is empty/,
  )
  expect(draftEntry('animals', { ...typed, change: 'died', body: 'no' })).toMatchObject({
    ok: true,
    body: { change: 'died', count: 3, bodyTakenOut: false },
  })
  expect(wordsOf('animals', { ...typed, change: 'added' })).toEqual([])
  expect(wordsOf('animals', { ...typed, change: 'added', count: '2.5' })).toHaveLength(1)
})

test('own values of a fact rise from low to high, in a unit that there is', () => {
  const typed = {
    fact: 'foam.k.tank',
    low: '3',
    typical: '2',
    high: '4',
    unit: 'per fortnight',
    reason: 'measured',
  }
  expect(wordsOf('fact-override', typed)).toHaveLength(2)
})

test('each setting of equipment is read in the unit of its key and said again as it was typed', () => {
  const settings = [
    ['organic carbon dosing', 'mL_per_day', '5 mL/d', 5],
    ['continuous water change', 'L_per_day', '4 L/d', 4],
    ['phosphate binder', 'La_mg_per_day', '20 mg/d', 20],
    ['filter sock', 'mesh_um', '200 µm', 200],
    ['refugium', 'light_umol_m2_s', '180 µmol/m2/s', 180],
    ['refugium', 'light_h_per_day', '10 h', 10],
    ['ultraviolet lamp', 'flow_L_per_hour', '0 L/h', 0],
    ['skimmer', 'running', 'off', false],
  ] as const
  for (const [equipment, setting, value, expected] of settings) {
    const draft = draftEntry('equipment-change', { equipment, setting, value }, about)
    expect(draft).toMatchObject({ ok: true, body: { changes: { [setting]: expected } } })
    if (!draft.ok) continue
    const again = draftEntry('equipment-change', equipmentChange.fills({ ...draft.body }), about)
    expect(again).toMatchObject({ ok: true, body: { changes: { [setting]: expected } } })
  }
})

test('media of a time that knew phosphate media alone are these, in what was typed as well', () => {
  const old = JSON.parse(readFileSync(new URL('media.v1.json', folder), 'utf8'))
  const read = readEntry({ ...old, body: { ...old.body, typed: { action: 'placed', mass: '200 g' } } })
  expect(read).toMatchObject({ ok: true, entry: { v: 2, body: { medium: 'phosphate media' } } })
  expect(read.ok && draftEntry('media', typedOf(read.entry), about)).toMatchObject({ ok: true })
})

test('traits are noted one by one, and what is none is told with all its fellows', () => {
  const noted = { surface: 'rock face', traits: 'colour=brown; form=dust_film' }
  const draft = draftEntry('observation', noted, about)
  expect(draft.ok && draft.body.traits).toEqual({ colour: 'brown', form: 'dust_film' })
  expect(wordsOf('observation', { ...noted, traits: 'brown colour=brown colour=green' })).toEqual([
    'What you noted: "brown" is no trait with its state. Each trait once, with its state. Write it such as colour=brown form=dust_film.',
    'What you noted: "colour" is noted twice. Each trait once, with its state. Write it such as colour=brown form=dust_film.',
  ])
})
