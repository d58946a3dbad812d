import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

vi.setConfig({ testTimeout: 120_000 })

async function logged() {
  const data = temporaryFolder()
  await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  for (const at of ['2026-01-05', '2026-01-20'])
    await runHere(['log', 'reading', 'nitrate', '60 mg/L NO3', '--at', at], data)
  return data
}

test('a ladder tells why, what to do with the cautions first, and what is left out', async () => {
  const data = await logged()
  const asked = ['ladder', '--members', '6', '--kind', 'hair_green']
  const { code, out } = await runHere([...asked, '--json'], data)
  expect(code).toBe(0)
  const answer = JSON.parse(out)
  expect(answer.kind).toBe('hair_green')
  expect(answer.causes.map(({ key }: { key: string }) => key)).toContain('growth')
  expect(answer.rungs.length).toBeGreaterThan(2)
  for (const rung of answer.rungs) expect(rung.judged_on > answer.as_of).toBe(true)
  const words = (await runHere(asked, data)).out
  expect(words).toMatch(/^Ladder of .+ on 2026-01-20, green hair algae/)
  const [first] = answer.rungs
  expect(words.indexOf(`1. ${first.title}`)).toBeGreaterThan(0)
  expect(words.indexOf(first.cautions[0].title)).toBeLessThan(words.indexOf(first.how))
  for (const { title } of answer.leftOut) expect(words).toContain(title)
})

test('an outbreak that is back is told with what ended it, and its ladder begins there', async () => {
  const data = await logged()
  const step = (stage: string, at: string, ...more: string[]) =>
    runHere(['log', 'outbreak', 'hair', stage, '--algae', 'hair_green', '--at', at, ...more], data)
  expect((await step('named', '2026-01-06')).code).toBe(0)
  await step('gone', '2026-01-10', '--done', 'Peroxide dip of a loose rock')
  await step('back', '2026-01-20')
  const { out } = await runHere(['ladder', '--members', '4'], data)
  expect(out).toContain('hair: back since 2026-01-20. Done: Peroxide dip of a loose rock (2026-01-10).')
  const titles = [...out.matchAll(/^\d+\. (.+)$/gm)].map(([, title]) => title)
  expect(titles.indexOf('Peroxide dip of a loose rock')).toBeLessThan(titles.indexOf('Pull by hand'))
})

test('a kind that the catalogue does not know is answered with the nearest', async () => {
  const { code, err } = await runHere(['ladder', '--kind', 'hair_gren'], await logged())
  expect(code).toBe(1)
  expect(err).toContain('hair_green')
})
