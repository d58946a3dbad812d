import { afterEach, describe, expect, test } from 'vitest'

import type { Entry, Stored } from '../entries/entry.ts'
import { Refused } from '../issue.ts'
import type { Logbook, Span } from '../logbook.ts'
import { nitrate } from './nitrate.ts'

/** Opens logs over one empty store: several workspaces, several times, under a clock of the test's. */
export interface Store {
  open(workspace: string, clock: () => Date): Promise<Logbook>
  remove(): Promise<void>
}

/** The number that `nitrate` put at the end of an id. */
const numberOf = ({ id }: Stored): number => Number(id.slice(-3))

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
      const numbers = async (span: Span): Promise<number[]> => (await log.read(span)).map(numberOf)
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
      expect(read.map(numberOf)).toEqual([3, 1, 2])
    })

    test('stores what was sent as it was sent', async () => {
      const log = await opened()
      const sent = Object.assign(nitrate(1), { mood: 'good', body: { ...nitrate(1).body, light: 'dim' } })
      await log.append([sent])
      expect(await log.asSent()).toEqual([{ ...sent, knownAt: '2026-02-01T08:00:00.000Z' }])
    })

    test('says that another came under an id, when it is of another system or corrects another entry', async () => {
      const log = await opened()
      await log.append([nitrate(1), nitrate(2)])
      const others = [nitrate(1, { system: 'frag tank' }), nitrate(2, { replaces: nitrate(1).id })]
      expect((await log.append(others)).differing).toEqual([nitrate(1).id, nitrate(2).id])
      const sameAgain = nitrate(1, { madeAt: '2026-03-01T10:00:00Z', device: 'laptop', batch: 'again' })
      expect((await log.append([sameAgain])).differing).toEqual([])
    })

    test('gives entries by id, those that correct others, and those that came since', async () => {
      const log = await opened()
      expect(await log.received()).toBe(0)
      const correction = nitrate(3, { replaces: nitrate(1).id })
      await log.append([nitrate(1), nitrate(2), correction])
      const numbers = async (span: Span): Promise<number[]> => (await log.read(span)).map(numberOf)
      expect(await numbers({ ids: [nitrate(2).id, nitrate(9).id] })).toEqual([2])
      expect(await numbers({ ids: [] })).toEqual([])
      expect(await numbers({ replacing: [nitrate(1).id, nitrate(2).id] })).toEqual([3])
      const received = await log.received()
      await log.append([nitrate(4), nitrate(1)])
      expect(await numbers({ after: received })).toEqual([4])
      expect(await log.received()).toBe(received + 1)
    })

    test('gives the log page by page, latest day first and of one day the latest received', async () => {
      const log = await opened()
      const days = ['2026-01-02', '2026-01-05', '2026-01-02', '2026-01-03', '2026-01-02']
      await log.append(days.map((at, place) => nitrate(place + 1, { at })))
      await log.append([nitrate(9, { system: 'frag tank', at: '2026-01-09' })])
      const pages: number[][] = []
      let before: string | undefined
      do {
        const page = await log.newest(2, { system: 'reef' }, before)
        pages.push(page.entries.map(numberOf))
        before = page.next
      } while (before !== undefined)
      expect(pages).toEqual([[2, 4], [5, 3], [1]])
      await expect(log.newest(2, {}, 'yesterday')).rejects.toThrow(Refused)
    })

    test('takes over a system with its times of receipt, and goes on from them', async () => {
      const log = await opened()
      await log.append([nitrate(9, { system: 'frag tank' })])
      const ahead = '2027-05-01T10:00:00.000Z'
      const kept = [
        { ...nitrate(2), knownAt: '2025-03-01T10:00:00.000Z' },
        { ...nitrate(1), knownAt: ahead },
      ]
      expect((await log.takeOver(kept)).added).toEqual([nitrate(2).id, nitrate(1).id])
      expect(await log.asSent({ system: 'reef' })).toEqual(kept)
      await log.append([nitrate(3), nitrate(4, { system: 'frag tank' })])
      const times = (await log.read({ after: 3 })).map(({ knownAt }) => knownAt)
      expect(times).toEqual([ahead, '2026-02-01T08:00:00.000Z'])
    })

    test('gives what a system lacked, that was here already, the time of now', async () => {
      const log = await opened()
      await log.append([nitrate(1)])
      const kept = [1, 2].map((number) => ({ ...nitrate(number), knownAt: '2025-03-01T10:00:00.000Z' }))
      const outcome = { added: [nitrate(2).id], already: [nitrate(1).id], differing: [] }
      expect(await log.takeOver(kept)).toEqual(outcome)
      const times = (await log.read()).map(({ knownAt }) => knownAt)
      expect(new Set(times)).toEqual(new Set(['2026-02-01T08:00:00.000Z']))
    })

    test('takes over nothing where receipts run backwards or are no instants', async () => {
      const log = await opened()
      const kept = ['2025-03-02T10:00:00.000Z', '2025-03-01T10:00:00.000Z', 'in spring'].map(
        (knownAt, place) => ({ ...nitrate(place), knownAt }),
      )
      const refused = await log.takeOver(kept).catch((error: unknown) => error)
      if (!(refused instanceof Refused)) throw new Error('not refused')
      expect(refused.issues.map(({ code }) => code)).toEqual(['order-of-receipt', 'not-an-instant'])
      expect(await log.read()).toEqual([])
    })

    test('keeps a file once, by what it holds, and gives back its bytes', async () => {
      const log = await opened()
      const bytes = Uint8Array.from({ length: 70_000 }, (_, place) => (place * place) % 251)
      const attached = await log.attach(bytes, 'image/jpeg')
      expect(attached).toMatchObject({ type: 'image/jpeg', size: 70_000 })
      expect(await log.attach(bytes, 'image/png')).toEqual(attached)
      expect(await log.attachment(attached.sha256)).toEqual({ ...attached, bytes })
      expect(await log.attachments()).toEqual([attached])
      expect(await log.attachment('0'.repeat(64))).toBeUndefined()
      // SHA-256 of nothing, FIPS 180-4.
      const empty = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'
      expect((await log.attach(new Uint8Array(), 'text/plain')).sha256).toBe(empty)
    })

    test('keeps caches until they are replaced or forgotten', async () => {
      const log = await opened()
      expect(await log.cached('outlook')).toBeUndefined()
      await log.cache('outlook', 'mild')
      await log.cache('outlook', 'rough')
      expect(await log.cached('outlook')).toBe('rough')
      await log.append([nitrate(1)])
      await log.forgetCaches()
      expect(await log.cached('outlook')).toBeUndefined()
      expect(await log.read()).toHaveLength(1)
    })

    test('stores nothing of a sending that holds what it could not read again', async () => {
      const log = await opened()
      const unknown = { ...nitrate(2), kind: 'weather' }
      const broken = { ...nitrate(3), body: { value: 'much' } }
      const refused = await log.append([nitrate(1), unknown, broken]).catch((error: unknown) => error)
      if (!(refused instanceof Refused)) throw new Error('not refused')
      expect(refused.issues.map(({ code }) => code)).toContain('unknown-kind')
      expect(refused.issues.some(({ where }) => where.includes(broken.id))).toBe(true)
      expect(await log.read()).toEqual([])
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
      const { sha256 } = await home.attach(new Uint8Array([1, 2, 3]), 'image/jpeg')
      expect(await club.attachment(sha256)).toBeUndefined()
      await home.cache('outlook', 'mild')
      expect(await club.cached('outlook')).toBeUndefined()
      await club.forgetCaches()
      expect(await home.cached('outlook')).toBe('mild')
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
