import { expect, test, vi } from 'vitest'
import { climbed, offered, read, soundReef, today } from '../testing/climbed.ts'

vi.setConfig({ testTimeout: 60_000 })

const inBand = read(6, 0.06)
const cautionsOf = (answer: ReturnType<typeof climbed>) => answer.cautions.map(({ key }) => key)

test('a tank that has grown too salty gets pure water, slowly, though its water carries nothing', () => {
  const answer = climbed({ observations: inBand, asked: { salinity_psu: 38.4 } })
  expect(answer.causes[0]).toMatchObject({ key: 'salinity', says: expect.stringContaining('4 days or more') })
  expect(offered(answer)[0]).toBe('topoff_pure_water')
  expect(cautionsOf(answer)).toContain('salinity_change_too_fast')
})

test('one that has grown too thin gets salt water, and steps half as large', () => {
  const answer = climbed({ observations: inBand, asked: { salinity_psu: 32.5 } })
  expect(answer.causes[0].says).toContain('5 days or more')
  expect(offered(answer)[0]).toBe('water_change_small')
})

test('salinity within what a refractometer can tell apart is no cause', () => {
  expect(climbed({ observations: inBand, asked: { salinity_psu: 35.8 } }).causes).toEqual([])
})

const dosing = (schedule: readonly (readonly [number, number])[]) => ({
  equipment: [
    ...soundReef.equipment,
    {
      kind: 'organic carbon dosing' as const,
      substance: 'ethanol' as const,
      schedule: schedule.map(([ago, mL]) => ({ from_: today - ago, mL_ethanol_per_day: mL })),
    },
  ],
})

test('a carbon dose that was made five times as large within a week is cut, with a word on oxygen', () => {
  const answer = climbed({
    system: dosing([
      [60, 2],
      [6, 10],
    ]),
    observations: inBand,
  })
  expect(answer.causes[0].key).toBe('dose-risen')
  expect(offered(answer)[0]).toBe('carbon_dose_less')
  expect(cautionsOf(answer)).toContain('oxygen_at_night')
})

test('a dose that was raised by steps, one a week, is left alone', () => {
  const steps = dosing([
    [40, 2],
    [21, 2.5],
    [14, 3],
    [7, 3.5],
  ])
  expect(climbed({ system: steps, observations: inBand }).causes).toEqual([])
})

test('phosphate that fresh media pull down by a tenth of a milligram a day asks for less of them', () => {
  const fallen = [
    ...read(6, 0.5).filter(({ day }) => day < today),
    { day: today - 1, quantity: 'phosphate' as const, value: 0.05, belowDetection: false },
  ].map((one) => (one.day === today - 15 && one.quantity === 'phosphate' ? { ...one, day: today - 5 } : one))
  const answer = climbed({
    observations: fallen,
    events: [{ day: today - 4, kind: 'media placed', mass_g: 150 }],
  })
  expect(answer.causes[0].key).toBe('falling')
  expect(offered(answer)[0]).toBe('ferric_media_less')
  expect(cautionsOf(answer)).toContain('phosphate_drop_too_fast')
})
