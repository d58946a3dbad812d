import type { Entry } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { entryText } from './entry-text.ts'

type Content = Pick<Entry, 'kind' | 'body'>
const says = ({ kind, body }: Content): string =>
  entryText({
    id: '018f3a1e-7c00-7000-8000-000000000001',
    workspace: 'home',
    system: 'reef',
    v: 1,
    at: '2026-02-01',
    precision: 'day',
    madeAt: '2026-02-01T12:00:00Z',
    by: 'keeper',
    device: 'desk',
    kind,
    body,
  } as Entry)

test('a reading is shown as it was typed, with its form and kit', () => {
  const body = { quantity: 'phosphate', value: 0.03, belowDetection: true, text: '<0.03' } as const
  expect(says({ kind: 'reading', body })).toBe('Phosphate <0.03')
  const full = { ...body, unit: 'mg/L', form: 'PO4', kit: 'photometer' }
  expect(says({ kind: 'reading', body: full })).toBe('Phosphate <0.03 mg/L PO4 (photometer)')
  expect(says({ kind: 'reading', body: { ...full, quantity: 'pH', text: '8.1' } })).toMatch(/^pH 8\.1/)
})

test('what was done is told in the keeper’s words, or from the figures where there are none', () => {
  const change = { volume_L: 40 }
  expect(says({ kind: 'water-change', body: { ...change, text: 'changed 40 L' } })).toBe('changed 40 L')
  const silent: readonly (readonly [Content, string])[] = [
    [{ kind: 'water-change', body: { ...change, text: '' } }, 'Water change of 40 L'],
    [{ kind: 'feeding', body: { g_per_day: 4, text: '' } }, 'Fed 4 g/d from here on'],
    [
      { kind: 'media', body: { action: 'replaced', mass_g: 200, text: '' } },
      'Phosphate media replaced, 200 g',
    ],
    [{ kind: 'media', body: { action: 'removed', text: '' } }, 'Phosphate media removed'],
    [
      { kind: 'survey', body: { surface: 'rock face', algae: 'hair_green', cover: 0.07, text: '' } },
      'hair_green on 7 % of rock face',
    ],
    [
      {
        kind: 'hand-removal',
        body: { surface: 'glass', algae: 'film_green', share: 0.5, leftToDrift: true, text: '' },
      },
      '50 % of film_green on glass removed by hand',
    ],
    [
      { kind: 'animals', body: { change: 'lost', taxon: 'Trochus histrio', count: 3, text: '' } },
      '3 Trochus histrio lost',
    ],
    [
      { kind: 'dose', body: { substance: 'sodium nitrate', mass_g: 2, text: '' } },
      'Dose of 2 g sodium nitrate',
    ],
    [{ kind: 'equipment-change', body: { equipment: 'lamp', changes: {}, text: '' } }, 'Change of lamp'],
    [{ kind: 'note', body: { text: 'all well' } }, 'all well'],
    [{ kind: 'retraction', body: { of: 'batch', id: 'import-1' } }, 'An import taken back'],
  ]
  for (const [content, text] of silent) expect(says(content)).toBe(text)
})
