import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { CrewAnswer } from '@holdfast/crew-plan'
import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// A plan lives some years in the model, which a busy machine lets it do slowly.
vi.setConfig({ testTimeout: 240_000 })

const few = ['--members', '4']

/** A log in which the small reef is described. */
async function described(): Promise<string> {
  const data = temporaryFolder()
  await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  return data
}

test('a crew is told with its trial, within the budget and without whom the keeper does not want', async () => {
  const data = await described()
  const asked = ['crew', ...few, '--never', 'urchin', '--budget', '150']
  const { code, out } = await runHere([...asked, '--json'], data)
  expect(code).toBe(0)
  const answer: Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }> = JSON.parse(out)
  expect(answer.status).toBe('plan')
  expect(answer.check.issues).toEqual([])
  const middle = answer.crew.reduce(
    (sum, { price_usd: { low, high }, order, come }) =>
      sum + (order > 0 ? (come * (low + high)) / 2 / order : 0),
    0,
  )
  expect(middle).toBeLessThanOrEqual(150)
  expect(answer.crew.some(({ group }) => group === 'urchin')).toBe(false)
  expect(answer.barred.find(({ taxon }) => taxon === 'Mespilia globulus')).toMatchObject({ code: 'refused' })

  const words = (await runHere([...asked, '--accept'], data)).out
  expect(words).toMatch(/Kept in the log/)
  expect((await runHere(['log', 'list'], data)).out).toContain('Crew plan accepted')
  expect(words).toMatch(/^Crew of .+ on 2026-/)
  expect(words).toContain('nobody starves')
  expect(words).toMatch(/algae eaten +\d/)
  for (const { taxon, tradeName, come } of answer.crew) {
    expect(words).toContain(tradeName)
    const lots = answer.steps.flatMap(({ animals }) => animals.filter((one) => one.taxon === taxon))
    expect(lots.reduce((sum, { count }) => sum + count, 0)).toBe(come)
  }
})

test('who is there and lacks food is told with what to feed, the caution first', async () => {
  const data = temporaryFolder()
  const file = join(temporaryFolder(), 'crowded.json')
  const told = JSON.parse(readFileSync(systemFile(), 'utf8'))
  const snails = { kind: 'snail', taxon: 'Trochus histrio', count: 400, role: 'grazer' }
  const algae = told.surfaces.map(({ id }: { readonly id: string }) => ({
    kind: 'film_green',
    surface: id,
    cover: 0.3,
  }))
  writeFileSync(file, JSON.stringify({ ...told, animals: [snails], algae }))
  await runHere(['system', 'add', file, '--from', '2026-01-01'], data)
  const { out } = await runHere(['crew', ...few, '--only', 'snail', '--keep'], data)
  const [, feeding = ''] = out.split('Too little grows for these of yours')
  expect(feeding).toMatch(/^\s+When growth ends, .+\n\s+400 banded trochus snail: .+ g of dried algae a week/)
  expect(out).toContain('do not replace them')
})

test('a vessel that is not there is refused with those that are', async () => {
  const { code, err } = await runHere(['crew', ...few, '--vessel', 'attic'], await described())
  expect(code).toBe(1)
  expect(err).toMatch(/"attic" is not in hall\. There are: display, sump\./)
})

test('wishes that clash are told with what would do', async () => {
  const { out } = await runHere(['crew', ...few, '--like', 'blenny', '--budget', '1'], await described())
  expect(out).toMatch(/cannot be had together: a budget of 1 US\$; at least one blenny/)
  expect(out).toMatch(/Raise the budget to \d+ US\$, or do without blenny/)
})

test('one plan over two systems says in words and as JSON who lends to whom, and what each crew is', async () => {
  const data = await described()
  const other = join(temporaryFolder(), 'other.json')
  writeFileSync(
    other,
    JSON.stringify({ ...JSON.parse(readFileSync(systemFile(), 'utf8')), id: 'other', name: 'Other' }),
  )
  await runHere(['system', 'add', other, '--from', '2026-01-01'], data)
  const [one] = JSON.parse((await runHere(['system', 'list', '--json'], data)).out)
  const asked = ['crew', ...few, '--system', one.id, '--with', 'other', '--only', 'snail']
  const { systems, lent } = JSON.parse((await runHere([...asked, '--json'], data)).out)
  expect(systems.map(({ system }: { readonly system: string }) => system)).toEqual([one.id, 'other'])
  // Two alike: neither has an animal to spare.
  expect(lent).toEqual([])
  const words = (await runHere(asked, data)).out
  expect(words).toContain('Nobody is lent')
  expect(words).toContain('Crew of Other on ')
  const alone = await runHere(['crew', ...few, '--with', 'other'], data)
  expect(alone.code).toBe(1)
  expect(alone.err).toContain('--system')
})

test('reach is told place by place, in words and as JSON', async () => {
  const data = await described()
  const { code, out } = await runHere(['reach', ...few, '--json'], data)
  expect(code).toBe(0)
  const { places } = JSON.parse(out)
  expect(places.length).toBeGreaterThan(0)
  for (const { growth_g_week, left_g_week } of places)
    expect(left_g_week.value).toBeLessThanOrEqual(growth_g_week.value + 1e-9)
  const words = (await runHere(['reach', ...few], data)).out
  expect(words).toMatch(/^Reach of the crew of .+ in the week from 2026-/)
  expect(words).toContain('Who gets where')
})
