import { expect, test } from 'vitest'

import { dateOrder, readDate, readTime } from './read-date.ts'

test.each([
  '2026-02-07',
  '2026-2-7',
  '07.02.2026',
  '7.2.26',
  '7 February 2026',
  '7. Februar 2026',
  '7 février 2026',
  '7 de febrero de 2026',
  'Sat Feb 7, 2026',
  'February 7th, 2026',
])('%s is the seventh of February, whatever the order of slashed dates', (text) => {
  expect(readDate(text, 'day first')).toBe('2026-02-07')
  expect(readDate(text, 'month first')).toBe('2026-02-07')
})

test('days and months that do not exist are no dates', () => {
  for (const text of ['2026-02-30', '31.04.2026', '13/13/2026', '7 Brumaire 2026', 'soon', '']) {
    expect(readDate(text, 'day first')).toBeUndefined()
  }
})

test('June and July, March and May are told apart in French and Dutch', () => {
  const read = ['4 juin 2026', '4 juillet 2026', '4 mars 2026', '4 mai 2026', '4 maart 2026', '4 mei 2026']
  expect(read.map((text) => readDate(text, 'day first')?.slice(5, 7))).toEqual([
    '06',
    '07',
    '03',
    '05',
    '03',
    '05',
  ])
})

test('a column is in order by its clearest date, and open where none is clear or two contradict', () => {
  expect(dateOrder(['3/4/26', '13/4/26'])).toBe('day first')
  expect(dateOrder(['3/4/26', '4/13/26'])).toBe('month first')
  expect(dateOrder(['3/4/26', '5/6/26'])).toBeUndefined()
  expect(dateOrder(['13/4/26', '4/13/26'])).toBeUndefined()
  expect(dateOrder(['2026-04-03', '3.4.2026'])).toBe('none')
})

test('times are of 24 hours or of twice twelve', () => {
  expect(['8:05', '21:00', '9.30 pm', '12:15 am', '25:00', 'noon'].map(readTime)).toEqual([
    '08:05',
    '21:00',
    '21:30',
    '00:15',
    undefined,
    undefined,
  ])
})
