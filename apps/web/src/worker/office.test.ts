import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import { withLog } from './log-once.ts'
import { type House, openOffice } from './office.ts'
import type { FromOffice, FromWorker, ToOffice, ToWorker } from './protocol.ts'

const question = { kind: 'outlook', outlook: questionOf(exampleData) } as const
const ask = (seq: number): ToWorker => ({
  type: 'ask',
  run: `run-${seq}`,
  seq,
  inputsHash: 'abc',
  question,
})
const issue = { code: 'x', where: '', got: '', accepted: '', next: '' }

function harness() {
  const houses: (House & { readonly got: ToOffice[]; ended: boolean })[] = []
  const open = openOffice(() => {
    const house = {
      got: [] as ToOffice[],
      ended: false,
      onmessage: null,
      postMessage: (message: ToOffice) => void house.got.push(message),
      terminate: () => {
        house.ended = true
      },
    }
    houses.push(house)
    return house
  })
  const heard: FromWorker[][] = []
  const line = () => {
    const port = open()
    const mine: FromWorker[] = []
    heard.push(mine)
    port.onmessage = ({ data }) => void mine.push(data)
    return port
  }
  const reply = (data: FromOffice) => houses.at(-1)?.onmessage?.({ data })
  return { houses, heard, line, reply }
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

it('starts one worker for all views, and gives each the replies to its own questions', () => {
  const { houses, heard, line, reply } = harness()
  const [water, ledger] = [line(), line()]
  expect(houses).toHaveLength(0)
  water.postMessage(ask(1))
  ledger.postMessage(ask(1))
  expect(houses).toHaveLength(1)
  reply({ line: 2, type: 'failed', run: 'run-1', seq: 1, inputsHash: 'abc', issue })
  expect(heard.map((one) => one.length)).toEqual([0, 1])
})

it('sends a log once, and the worker has the whole of every question', () => {
  const { houses, line } = harness()
  line().postMessage(ask(1))
  line().postMessage(ask(1))
  const asked = (houses[0]?.got ?? []).flatMap((one) => (one.type === 'ask' ? [one.question.outlook] : []))
  expect(asked.map(({ log }) => log !== undefined)).toEqual([true, false])
  expect(asked.map(withLog())).toEqual([question.outlook, question.outlook])
})

it('leaves the worker to the other views where one goes and is heard', () => {
  const { houses, line, reply } = harness()
  const [water, ledger] = [line(), line()]
  water.postMessage(ask(1))
  ledger.postMessage(ask(1))
  water.terminate()
  expect(houses[0]?.got.at(-1)).toEqual({ type: 'leave', line: 1 })
  reply({ line: 1, type: 'left' })
  vi.advanceTimersByTime(10_000)
  expect(houses).toHaveLength(1)
  expect(houses[0]?.ended).toBe(false)
})

it('ends a worker that does not hear, and asks anew what the others wait for', () => {
  const { houses, heard, line, reply } = harness()
  const [crew, answered, waiting] = [line(), line(), line()]
  crew.postMessage(ask(1))
  answered.postMessage(ask(1))
  waiting.postMessage(ask(7))
  reply({ line: 2, type: 'failed', run: 'run-1', seq: 1, inputsHash: 'abc', issue })
  crew.terminate()
  vi.advanceTimersByTime(10_000)
  expect(houses).toHaveLength(2)
  expect(houses[0]?.ended).toBe(true)
  expect(houses[1]?.got).toMatchObject([{ type: 'ask', line: 3, seq: 7, question: { outlook: { log: {} } } }])
  houses[0]?.onmessage?.({
    data: { line: 3, type: 'failed', run: 'run-7', seq: 7, inputsHash: 'abc', issue },
  })
  expect(heard[2]).toEqual([])
})

it('lets a view go that waits for nothing, without a word to the worker', () => {
  const { houses, line, reply } = harness()
  const water = line()
  water.postMessage(ask(1))
  reply({ line: 1, type: 'failed', run: 'run-1', seq: 1, inputsHash: 'abc', issue })
  water.terminate()
  vi.advanceTimersByTime(10_000)
  expect(houses).toHaveLength(1)
  expect(houses[0]?.got).toHaveLength(1)
})
