import { composeEntry, type JournalLine } from '@holdfast/logbook'
import { expect, it } from 'vitest'
import { exampleData } from '../../fixtures/example-system.ts'
import { inOtherSystems } from './whole-import.ts'

const described = { system: exampleData.system, workspace: 'home', kept: 'on this machine' }

const lineOf = (system: string, batch: string, by?: string): JournalLine => {
  const now = '2026-03-01T12:00:00Z'
  const entry = composeEntry(
    {
      workspace: 'home',
      system,
      kind: 'note',
      at: '2026-03-01',
      precision: 'day',
      by: 'keeper',
      device: 'test',
      batch,
      body: { text: 'a tank of the same sheet' },
    },
    new Date(now),
  )
  return {
    entry: { ...entry, knownAt: now } as JournalLine['entry'],
    state: by === undefined ? 'holds' : 'taken back',
    ...(by === undefined ? {} : { by }),
    rivals: [],
    says: '',
  }
}

const log = (lines: readonly JournalLine[]) => ({
  systems: async () =>
    [exampleData.system.id, 'frag-tank', 'quarantine'].map((id) => ({ id, name: `The ${id}` })),
  lines: async (system: string) => lines.filter(({ entry }) => entry.system === system),
})

it('an import of several tanks is taken back in each that has some of it, and in no other', async () => {
  const there = log([lineOf('frag-tank', 'tests.csv'), lineOf('quarantine', 'tests.csv of last year')])
  const written = await inOtherSystems(described, 'tests.csv', 'taken back', there)
  expect(written.map(({ system, body }) => [system, body])).toEqual([
    ['frag-tank', { of: 'batch', id: 'tests.csv' }],
  ])
})

it('it is brought back where it was taken back as one', async () => {
  const there = log([
    lineOf('frag-tank', 'tests.csv', 'retraction-1'),
    lineOf('frag-tank', 'tests.csv', 'retraction-1'),
    lineOf('quarantine', 'tests.csv', 'retraction-2'),
    lineOf('quarantine', 'tests.csv'),
  ])
  const written = await inOtherSystems(described, 'tests.csv', 'brought back', there)
  expect(written.map(({ system, body }) => [system, body])).toEqual([
    ['frag-tank', { of: 'entry', id: 'retraction-1' }],
  ])
})
