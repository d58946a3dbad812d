import { expect, test } from 'vitest'
import { entriesIn } from './making/entries.ts'
import { type ExampleFiles, filesOf } from './making/files.ts'
import type { Story } from './making/story.ts'
import { lampDate } from './reef-90/husbandry.ts'
import { reef90 } from './reef-90/story.ts'

const coverOn = (files: ExampleFiles, surface: string) =>
  entriesIn(files['log.json']).flatMap(({ kind, at, body }) =>
    kind === 'survey' && body.surface === surface ? [{ at, cover: body.cover }] : [],
  )
const most = (seen: readonly { readonly cover: number }[]) => Math.max(...seen.map(({ cover }) => cover))

const files = filesOf(reef90)

test('two snails hold the hair algae under the old lamp, and not under the new one', () => {
  const rock = coverOn(files, 'rock face')
  expect(most(rock.filter(({ at }) => at < lampDate))).toBeLessThan(0.1)
  expect(most(rock.filter(({ at }) => at > lampDate))).toBeGreaterThan(0.4)
  // The lamp stands over the rock; glass is cleaned by hand.
  expect(most(coverOn(files, 'glass'))).toBeLessThan(0.25 * most(rock))
})

test('had the old lamp stayed, there would have been no outbreak', () => {
  const oldLamp: Story = { ...reef90, deeds: reef90.deeds.filter(({ kind }) => kind !== 'light-change') }
  expect(most(coverOn(filesOf(oldLamp), 'rock face'))).toBeLessThan(0.1)
})

test('the algae empty the water of nitrate, so that the kit tells of plenty before and of nothing after', () => {
  const nitrate = entriesIn(files['log.json']).flatMap(({ kind, at, body }) =>
    kind === 'reading' && body.quantity === 'nitrate' ? [{ at, value: body.value ?? 0 }] : [],
  )
  const mean = (of: readonly { readonly value: number }[]) =>
    of.reduce((sum, { value }) => sum + value, 0) / of.length
  const before = mean(nitrate.filter(({ at }) => at >= '2026-04-05' && at <= lampDate))
  const after = mean(nitrate.filter(({ at }) => at >= '2026-10-11'))
  expect(before).toBeGreaterThan(4)
  expect(after).toBeLessThan(0.25 * before)
})
