import { expect, test } from 'vitest'
import { forecastsOf, isCalibrated, keyCalibration } from './calibration.ts'

test('growths drawn from the table with noise are named as surely as is said', () => {
  expect(keyCalibration()).toMatchObject([{ outcome: 'passed' }])
})

test('a key that is surer than it may be is not calibrated', () => {
  const boasting = forecastsOf({ together: 0.5, noise: 0.05 }, 2).map(({ said, was }) => ({
    said: Math.min(0.98, said + 0.1),
    was,
  }))
  expect(isCalibrated(boasting)).toBe(false)
})

test('keepers who note anything at all are not calibrated for', () => {
  expect(isCalibrated(forecastsOf({ together: 0.5, noise: 0.4 }, 1))).toBe(false)
})
