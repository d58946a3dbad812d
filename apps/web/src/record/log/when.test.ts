import { describe, expect, it } from 'vitest'
import { isSame, momentOf, today, whenOf, withOffset } from './when.ts'

const zone = 'Europe/Berlin'
const now = new Date('2026-03-01T22:30:00Z')

describe('the day and time of an entry', () => {
  it('is now by the clock on the wall beside the tank, wherever the browser is', () => {
    expect(momentOf('now', zone, now)).toEqual({
      ok: true,
      at: '2026-03-01T23:30+01:00[Europe/Berlin]',
      precision: 'minute',
    })
    expect(momentOf('now', 'Asia/Tokyo', now)).toMatchObject({ at: '2026-03-02T07:30+09:00[Asia/Tokyo]' })
    expect(today('Asia/Tokyo', now)).toBe('2026-03-02')
  })

  it('is a day alone where no time is given', () => {
    const read = momentOf({ date: '2026-03-01', time: '' }, zone, now)
    expect(read).toEqual({ ok: true, at: '2026-03-01', precision: 'day' })
  })

  it('is a day and time as written, and reads so again', () => {
    const read = momentOf({ date: '2026-07-01', time: '08:05' }, zone, now)
    expect(read).toEqual({ ok: true, at: '2026-07-01T08:05+02:00[Europe/Berlin]', precision: 'minute' })
    expect(read.ok && whenOf(read)).toEqual({ date: '2026-07-01', time: '08:05' })
    expect(whenOf({ at: '2026-07-01', precision: 'day' })).toEqual({ date: '2026-07-01', time: '' })
  })

  it('is asked for in an hour that an autumn night has twice, and the answer is one of the two', () => {
    const twice = { date: '2026-10-25', time: '02:30' }
    const read = momentOf(twice, zone, now)
    const options = !read.ok && 'question' in read ? read.question.options : []
    expect(options.map(({ value }) => momentOf(withOffset(twice, value), zone, now))).toMatchObject([
      { at: '2026-10-25T02:30+02:00[Europe/Berlin]' },
      { at: '2026-10-25T02:30+01:00[Europe/Berlin]' },
    ])
  })

  it('is none where the calendar has no such day, or nothing is filled in', () => {
    for (const when of [
      { date: '2026-02-30', time: '' },
      { date: '', time: '' },
      { date: '2026-03-01', time: '25:00' },
    ])
      expect(momentOf(when, zone, now)).toMatchObject({ ok: false, issues: [{ where: 'Time' }] })
  })

  it('is the same as long as nobody touches it', () => {
    const when = { date: '2026-03-01', time: '' }
    expect([isSame('now', 'now'), isSame(when, { ...when }), isSame(when, 'now')]).toEqual([
      true,
      true,
      false,
    ])
    expect(isSame(when, { ...when, time: '08:00' })).toBe(false)
  })
})
