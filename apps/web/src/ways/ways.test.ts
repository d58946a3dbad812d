import { expect, it } from 'vitest'
import { waysOfLanguage } from './ways.ts'

it('a keeper in the United States reads gallons, a point, and the month first', () => {
  expect(waysOfLanguage('en-US')).toMatchObject({ units: 'US', decimal: 'point', dates: 'month first' })
})

it('a keeper in Germany reads litres, a comma, and the day first', () => {
  expect(waysOfLanguage('de-DE')).toMatchObject({ units: 'metric', decimal: 'comma', dates: 'day first' })
})

it('a keeper in Japan reads litres and the year first', () => {
  expect(waysOfLanguage('ja-JP')).toMatchObject({ units: 'metric', dates: 'year first' })
})
