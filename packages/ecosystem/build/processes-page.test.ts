import { readFileSync } from 'node:fs'
import { facts } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { processes } from '../src/processes/index.ts'
import { presentProcessesPage } from './present-processes-page.ts'

const written = readFileSync(new URL('../../../docs/how-it-works/processes.md', import.meta.url), 'utf8')

test('the page of the processes is the one their declarations make: node scripts/run.mjs make-processes-page', () => {
  expect(written).toBe(presentProcessesPage())
})

test('the page names every process and only facts that there are', () => {
  for (const { title } of processes) expect(written).toContain(`### ${title}\n`)
  const known = new Set(facts().map(({ id }) => id))
  const named = [...written.matchAll(/\| `([a-z]\w*\.[\w.]+)` \|/g)].map(([, id]) => id ?? '')
  expect(named.length).toBeGreaterThan(100)
  expect(named.filter((id) => !known.has(id))).toEqual([])
})
