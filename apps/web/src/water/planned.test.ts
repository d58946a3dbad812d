import type { Event } from '@holdfast/ecosystem'
import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { plannedEvents } from './planned.ts'
import { asToday, type Settings, todayOf } from './settings.ts'

const { asOf, system } = exampleData
const reactor = { kind: 'ferric media reactor', mass_g: 80 } as const
const planned = (events: readonly Event[], moved: Partial<Settings> = {}) => {
  const equipment = [{ kind: 'water change', volume_L: 30, every_days: 14 } as const, reactor]
  const data = { system: { ...system, equipment }, events, asOf }
  const today = todayOf(data)
  return plannedEvents({ data, today, set: { ...asToday(today), ...moved } }, 56)
}
const changed: Event = { day: asOf - 4, kind: 'water change', volume_L: 30 }

describe('what is planned', () => {
  it('is a water change one interval after the last, and on', () => {
    expect(planned([changed]).map(({ day }) => day - asOf)).toEqual([10, 24, 38, 52])
    expect(planned([changed])[0]).toMatchObject({ kind: 'water', says: 'Water change, 30 L' })
  })

  it('is no water change without a volume', () => {
    expect(planned([changed], { water_L: 0 })).toEqual([])
  })

  it('is what the log plans besides', () => {
    const ahead: Event = { day: asOf + 3, kind: 'siphoning' }
    expect(planned([ahead], { water_L: 0 })).toEqual([{ day: asOf + 3, kind: 'other', says: 'Siphoning' }])
  })

  it('is a filling of media where a lever plans it, the first at once where the old ones are over', () => {
    const placed: Event = { day: asOf - 30, kind: 'media placed', mass_g: 80 }
    const media = planned([placed], { water_L: 0, media_g: 100, media_days: 25 })
    expect(media.map(({ day }) => day - asOf)).toEqual([0.01, 25.01, 50.01].map((day) => expect.closeTo(day)))
    expect(media[0]).toMatchObject({ kind: 'media', says: 'Fresh media, 100 g' })
    expect(planned([placed], { water_L: 0 })).toEqual([])
  })
})
