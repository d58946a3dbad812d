import type { Event } from '@holdfast/ecosystem'
import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { asToday, leversOf, todayOf } from './settings.ts'

const { system } = exampleData
const reactor = { kind: 'ferric media reactor', mass_g: 80, replaced_every_days: 42 } as const
const data = (events: readonly Event[]) => ({
  system: {
    ...system,
    feeds: [
      { kind: 'pellet', g_per_day: 3 },
      { kind: 'frozen brine', g_per_day: 1 },
    ],
    equipment: [{ kind: 'water change', volume_L: 30, every_days: 14 }, reactor] as const,
  },
  events,
  asOf: 100,
})

describe('how a system is kept today', () => {
  it('is as it was described, where the log changed nothing', () => {
    expect(todayOf(data([]))).toEqual({
      feed_g: 4,
      water_L: 30,
      water_days: 14,
      media_g: 80,
      media_days: 42,
    })
  })

  it('follows the log: another ration, other litres, media out', () => {
    const events: readonly Event[] = [
      { day: 10, kind: 'feed change', g_per_day: 8 },
      { day: 20, kind: 'feed change', feed: 'frozen brine', g_per_day: 1 },
      { day: 30, kind: 'equipment change', equipment: 'water change', changes: { volume_L: 45 } },
      { day: 40, kind: 'media removed' },
      { day: 120, kind: 'feed change', g_per_day: 1 },
    ]
    expect(todayOf(data(events))).toMatchObject({ feed_g: 7, water_L: 45, water_days: 14, media_g: 0 })
  })

  it('has no plan for media whose fillings are logged, and none for what the system lacks', () => {
    const filled = todayOf(data([{ day: 50, kind: 'media placed', mass_g: 60 }]))
    expect(filled.media_g).toBe(60)
    expect(filled.media_days).toBeUndefined()
    const bare = { system: { ...system, feeds: [], equipment: [] }, events: [], asOf: 100 }
    expect(todayOf(bare)).toEqual({})
  })
})

describe('the levers', () => {
  const today = todayOf(data([]))
  it('ask for nothing while they stand as today', () => {
    expect(leversOf(asToday(today), today)).toBeUndefined()
  })

  it('ask for what is moved and for nothing else', () => {
    expect(leversOf({ ...asToday(today), feed_g: 2 }, today)).toEqual({ feedFactor: 0.5 })
    expect(leversOf({ ...asToday(today), media_days: 30 }, today)).toEqual({
      media: { mass_g: 80, every_days: 30 },
    })
  })
})
