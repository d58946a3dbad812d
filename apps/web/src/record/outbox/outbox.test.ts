import type { Entry } from '@holdfast/logbook'
import { describe, expect, it } from 'vitest'
import type { Store } from '../../shell/browser-store.ts'
import { openOutbox, type Receipt, type Waiting } from './outbox.ts'

/** The browser's store, with room for so many names. */
function storeFor(room = 1000): Store {
  const held = new Map<string, string>()
  return {
    get length() {
      return held.size
    },
    key: (i) => [...held.keys()][i] ?? null,
    getItem: (name) => held.get(name) ?? null,
    removeItem: (name) => void held.delete(name),
    setItem: (name, text) => {
      if (!held.has(name) && held.size >= room) throw new DOMException('full', 'QuotaExceededError')
      held.set(name, text)
    },
  }
}

const id = (n: number) => `0199aaaa-0000-7000-8000-00000000000${n}`

function note(n: number, text = `note ${n}`): Waiting {
  const entry: Entry = {
    id: id(n),
    workspace: 'home',
    system: 'reef',
    kind: 'note',
    v: 1,
    at: '2026-03-01',
    precision: 'day',
    madeAt: '2026-03-01T08:00:00Z',
    by: 'keeper',
    device: 'browser',
    body: { text },
  }
  return { entry, typed: { text } }
}

/** A log that answers as told, then stores; it writes down all that arrives. */
function logThat(...answers: readonly Receipt[]) {
  const arrived: string[] = []
  const left = [...answers]
  const send = async ({ id }: Entry): Promise<Receipt> => {
    arrived.push(id)
    return left.shift() ?? { is: 'stored' }
  }
  return { send, arrived }
}

const ids = (waiting: readonly Waiting[]) => waiting.map(({ entry }) => entry.id)

describe('what waits for the log', () => {
  it('leaves when the log has it, and is sent in the order in which it was written', async () => {
    const { send, arrived } = logThat()
    const outbox = openOutbox(send, storeFor())
    outbox.put(note(2))
    outbox.put(note(1))
    expect(ids(outbox.waiting())).toEqual([id(1), id(2)])
    expect(await outbox.send()).toBe(true)
    expect(arrived).toEqual([id(1), id(2)])
    expect(outbox.waiting()).toEqual([])
  })

  it('stays over a reload where nobody answers, and goes again under the same id', async () => {
    const store = storeFor()
    const silent = logThat({ is: 'no answer' })
    const before = openOutbox(silent.send, store)
    before.put(note(1))
    expect(await before.send()).toBe(false)
    const { send, arrived } = logThat()
    const after = openOutbox(send, store)
    expect(after.waiting()).toEqual([note(1)])
    expect(await after.send()).toBe(true)
    expect([...silent.arrived, ...arrived]).toEqual([id(1), id(1)])
    expect(openOutbox(send, store).waiting()).toEqual([])
  })

  it('is kept with the reasons where the log refuses it, and holds up nothing else', async () => {
    const { send, arrived } = logThat({ is: 'refused', issues: ['Volume: 0 L is none.'] })
    const outbox = openOutbox(send, storeFor())
    outbox.put(note(1))
    outbox.put(note(2))
    expect(await outbox.send()).toBe(true)
    expect(outbox.waiting()).toEqual([{ ...note(1), refused: ['Volume: 0 L is none.'] }])
    await outbox.send()
    expect(arrived).toEqual([id(1), id(2)])
    outbox.drop(id(1))
    expect(outbox.waiting()).toEqual([])
  })

  it('is sent from the page where the browser has no room for it, which is said', async () => {
    const { send, arrived } = logThat()
    const outbox = openOutbox(send, storeFor(1))
    outbox.put(note(1))
    expect(outbox.unkept()).toBe(false)
    outbox.put(note(2))
    expect(outbox.unkept()).toBe(true)
    expect(ids(outbox.waiting())).toEqual([id(1), id(2)])
    expect(await outbox.send()).toBe(true)
    expect(arrived).toEqual([id(1), id(2)])
    expect(outbox.unkept()).toBe(false)
  })

  it('is the work of two tabs without one taking away what the other has', async () => {
    const store = storeFor()
    const [one, other] = [logThat({ is: 'no answer' }), logThat()]
    const here = openOutbox(one.send, store)
    const there = openOutbox(other.send, store)
    here.put(note(1))
    there.put(note(2))
    await here.send()
    there.refresh()
    await there.send()
    here.refresh()
    expect(other.arrived).toEqual([id(1), id(2)])
    expect(here.waiting()).toEqual([])
  })

  it('goes once when sending is asked for twice at a time, and takes along what is written meanwhile', async () => {
    const { send, arrived } = logThat()
    const outbox = openOutbox(send, storeFor())
    outbox.put(note(1))
    const both = Promise.all([outbox.send(), outbox.send()])
    outbox.put(note(2))
    await both
    expect(arrived).toEqual([id(1), id(2)])
  })

  it('outlives what is not its own in the store', () => {
    const store = storeFor()
    store.setItem('holdfast.waiting.torn', '{"entry":')
    store.setItem('holdfast.waiting.other', '7')
    expect(openOutbox(logThat().send, store).waiting()).toEqual([])
  })
})
