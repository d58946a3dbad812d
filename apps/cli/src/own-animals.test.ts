import { join } from 'node:path'
import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// Each answer is worked out anew, which a busy machine does slowly.
vi.setConfig({ testTimeout: 120_000 })

const blenny = { taxon: 'Grey blenny', like: 'Salarias fasciatus', tastes: { hair_green: 0.9 } }
const described = (own: unknown) => [
  'system',
  'add',
  systemFile({ 'own animals': own }),
  '--from',
  '2026-01-01',
]
const few = ['--members', '2', '--json']
const added = ['log', 'animals', 'added', blenny.taxon, '1', '--at', '2026-01-20']

test('an animal of the keeper’s own is logged like another, and reach, crew and ledger count it', async () => {
  const data = temporaryFolder()
  expect(await runHere(described([blenny]), data)).toMatchObject({ code: 0, err: '' })
  expect(await runHere(added, data)).toMatchObject({ code: 0, err: '' })
  expect((await runHere(['system', 'show'], data)).out).toMatch(/Own animal +Grey blenny, like Salarias/)

  const reach = JSON.parse((await runHere(['reach', ...few], data)).out)
  const [own] = reach.grazers.filter(({ taxon }: { readonly taxon: string }) => taxon === blenny.taxon)
  expect(own.gets).toContain('rock face open')
  expect(own.used.value).toBeGreaterThan(0)

  const crew = JSON.parse((await runHere(['crew', ...few, '--like', blenny.taxon], data)).out)
  const known = [...crew.crew, ...crew.barred].map(({ taxon }: { readonly taxon: string }) => taxon)
  expect(known).toContain(blenny.taxon)
  const ledger = JSON.parse((await runHere(['ledger', ...few], data)).out)
  expect(JSON.stringify(ledger)).not.toContain('is not used')
})

test('it goes over with the record to another machine, and reach is the same there', async () => {
  const [here, there] = [temporaryFolder(), temporaryFolder()]
  await runHere(described([blenny]), here)
  await runHere(added, here)
  const file = join(temporaryFolder(), 'log.json')
  await runHere(['export', file], here)
  expect(await runHere(['import', file, '--yes'], there)).toMatchObject({ code: 0 })
  for (const asked of [
    ['system', 'show', '--json'],
    ['reach', ...few],
  ])
    expect((await runHere(asked, there)).out).toBe((await runHere(asked, here)).out)
})

test('one that is like nobody, or eats what is not known, is refused with the nearest, and nothing is stored', async () => {
  const data = temporaryFolder()
  const wrong = [{ ...blenny, like: 'Salarias fascatus', tastes: { hair: 1 } }]
  const { code, err } = await runHere(described(wrong), data)
  expect(code).toBe(1)
  expect(err).toContain('own animals 1, like: "Salarias fascatus" is no grazer of the catalogue.')
  expect(err).toContain('The nearest are Salarias fasciatus')
  expect(err).toMatch(/own animals 1, tastes, hair: "hair" is no food of the catalogue\. One of .*hair_green/)
  expect((await runHere(['system', 'list', '--json'], data)).out.trim()).toBe('[]')
})
