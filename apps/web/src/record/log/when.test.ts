import { describe, expect, it } from 'vitest'
import { momentOf, today, whenOf } from './when.ts'

const zone = 'Europe/Berlin'
const now = new Date('2026-03-01T22:30:00Z')

describe('the day and time of an entry', () => {
  it('is now by the clock on the wall beside the tank, wherever the browser is', () => {
    expect(momentOf('now', zone, now)).toEqual({
      at: '2026-03-01T23:30+01:00[Europe/Berlin]',
      precision: 'minute',
    })
    expect(momentOf('now', 'Asia/Tokyo', now)?.at).toBe('2026-03-02T07:30+09:00[Asia/Tokyo]')
    expect(today('Asia/Tokyo', now)).toBe('2026-03-02')
  })

  it('tells the two hours apart that an autumn night has twice', () => {
    const [first, second] = ['2026-10-25T00:30:00Z', '2026-10-25T01:30:00Z'].map(
      (instant) => momentOf('now', zone, new Date(instant))?.at,
    )
    expect([first, second]).toEqual([
      '2026-10-25T02:30+02:00[Europe/Berlin]',
      '2026-10-25T02:30+01:00[Europe/Berlin]',
    ])
  })

  it('is a day alone where no time is given', () => {
    expect(momentOf({ date: '2026-03-01', time: '' }, zone, now)).toEqual({
      at: '2026-03-01',
      precision: 'day',
    })
  })

  it('is a day and time as written, and reads so again', () => {
    const moment = momentOf({ date: '2026-07-01', time: '08:05' }, zone, now)
    expect(moment).toEqual({ at: '2026-07-01T08:05+02:00[Europe/Berlin]', precision: 'minute' })
    expect(moment && whenOf(moment)).toEqual({ date: '2026-07-01', time: '08:05' })
    expect(whenOf({ at: '2026-07-01', precision: 'day' })).toEqual({ date: '2026-07-01', time: '' })
  })

  it('is none where the calendar has no such day, or nothing is filled in', () => {
    expect(momentOf({ date: '2026-02-30', time: '' }, zone, now)).toBeUndefined()
    expect(momentOf({ date: '', time: '' }, zone, now)).toBeUndefined()
    expect(momentOf({ date: '2026-03-01', time: '25:00' }, zone, now)).toBeUndefined()
  })
})
