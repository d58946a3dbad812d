import { afterEach, describe, expect, test } from 'vitest'

import type { Entry } from '../entries/entry.ts'
import { Refused } from '../issue.ts'
import type { Logbook } from '../logbook.ts'
import { nitrate } from './nitrate.ts'

/** Opens logs over one empty store: several workspaces, several times, under a clock of the test's. */
export interface Store {
  open(workspace: string, clock: () => Date): Promise<Logbook>
  remove(): Promise<void>
}

/** The laws of the storage port; every adapter runs them on a real store. */
export function logbookConformance(name: string, makeStore: () => Promise<Store>): void {
  const stores: Store[] = []
  const opened = async (
    workspace = 'home',
    clock = () => new Date('2026-02-01T08:00:00.000Z'),
  ): Promise<Logbook> => {
    const store = await makeStore()
    stores.push(store)
    return store.open(workspace, clock)
  }
  afterEach(async () => {
    for (const store of stores.splice(0)) await store.remove()
  })

  describe(`the log kept in ${name}`, () => {
    test('gives back what was put in, with the time of receipt', async () => {
      const log = await opened()
      await log.append([nitrate(5)])
      expect(await log.read()).toEqual([{ ...nitrate(5), knownAt: '2026-02-01T08:00:00.000Z' }])
    })

    test('stores an entry sent twice once, in one sending or in two', async () => {
      const log = await opened()
      expect(await log.append([nitrate(1), nitrate(1)])).toEqual({
        added: [nitrate(1).id],
        already: [nitrate(1).id],
        differing: [],
      })
      expect((await log.append([nitrate(1), nitrate(2)])).added).toEqual([nitrate(2).id])
      expect(await log.read()).toHaveLength(2)
    })

    test('never changes what is stored, and says that another came under its id', async () => {
      const log = await opened()
      await log.append([nitrate(1)])
      const other = nitrate(1, { body: { ...nitrate(1).body, value: 99 } })
      expect(await log.append([other])).toMatchObject({ added: [], differing: [other.id] })
      expect(await log.read()).toMatchObject([{ body: { value: 1 } }])
    })

    test('reads by system, kind and span of days, both ends included', async () => {
      const log = await opened()
      const note: Entry = { ...nitrate(4), kind: 'note', body: { text: 'calm' }, at: '2026-01-03' }
      const timed = { at: '2026-01-02T23:30+01:00[Europe/Berlin]', precision: 'minute' } as const
      await log.append([
        nitrate(1, { at: '2026-01-01' }),
        nitrate(2, timed),
        nitrate(3, { system: 'frag tank' }),
        note,
      ])
      const numbers = async (span: Parameters<Logbook['read']>[0]): Promise<number[]> =>
        (await log.read(span)).map((entry) => Number(entry.id.slice(-3)))
      expect(await numbers({ system: 'reef' })).toEqual([1, 2, 4])
      expect(await numbers({ kinds: ['note'] })).toEqual([4])
      expect(await numbers({ kinds: [] })).toEqual([])
      expect(await numbers({ from: '2026-01-02', to: '2026-01-03' })).toEqual([2, 4])
      expect(await log.systems()).toEqual(['frag tank', 'reef'])
    })

    test('keeps the order of receipt even when the clock is set back', async () => {
      const hours = ['08:00', '07:00', '09:00']
      const log = await opened('home', () => new Date(`2026-02-01T${hours.shift()}:00.000Z`))
      for (const number of [3, 1, 2]) await log.append([nitrate(number)])
      const read = await log.read()
      expect(read.map((entry) => entry.knownAt.slice(11, 16))).toEqual(['08:00', '08:00', '09:00'])
      expect(read.map((entry) => Number(entry.id.slice(-3)))).toEqual([3, 1, 2])
    })

    test('stores all of a sending or nothing, and refuses another workspace', async () => {
      const log = await opened()
      await expect(log.append([nitrate(1), nitrate(2, { workspace: 'club' })])).rejects.toThrow(Refused)
      expect(await log.read()).toEqual([])
    })

    test('keeps workspaces apart, under the same id', async () => {
      const store = await makeStore()
      stores.push(store)
      const clock = (): Date => new Date('2026-02-01T08:00:00Z')
      const [home, club] = [await store.open('home', clock), await store.open('club', clock)]
      await home.append([nitrate(1)])
      expect(await club.read()).toEqual([])
      expect((await club.append([nitrate(1, { workspace: 'club' })])).added).toHaveLength(1)
      expect(await club.systems()).toEqual(['reef'])
    })

    test('is there again when opened anew, with fields that this version does not know', async () => {
      const store = await makeStore()
      stores.push(store)
      const first = await store.open('home', () => new Date())
      await first.append([Object.assign(nitrate(1), { mood: 'good' })])
      await first.close()
      const again = await store.open('home', () => new Date())
      expect(await again.read()).toMatchObject([{ id: nitrate(1).id, mood: 'good' }])
    })

    test('takes two writers at once, losing and doubling nothing', async () => {
      const store = await makeStore()
      stores.push(store)
      const logs = await Promise.all([1, 2].map(() => store.open('home', () => new Date())))
      await Promise.all(
        Array.from({ length: 40 }, (_, n) => logs[n % 2].append([nitrate(n), nitrate(n + 1)])),
      )
      const read = await logs[0].read()
      expect(new Set(read.map((entry) => entry.id)).size).toBe(41)
      expect(read).toHaveLength(41)
    })
  })
}
