import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import type { OutlookAnswer } from './answers.ts'
import { type Overtaken, openDesk, type Port } from './desk.ts'
import type { FromWorker, Question, RunName, ToWorker } from './protocol.ts'

const asked = (volume_L: number, members = 24): Question => ({
  kind: 'outlook',
  outlook: { ...questionOf(exampleData, { waterChange: { volume_L, every_days: 7 } }), members },
})

/** The desk passes answers on and never looks into them. */
const answer = {} as OutlookAnswer

function harness(overtaken: Overtaken = 'let end') {
  const ports: (Port & { readonly got: ToWorker[]; ended: boolean })[] = []
  const heard: FromWorker[] = []
  const spawn = () => {
    const port = {
      got: [] as ToWorker[],
      ended: false,
      onmessage: null,
      postMessage: (message: ToWorker) => void port.got.push(message),
      terminate: () => {
        port.ended = true
      },
    }
    ports.push(port)
    return port
  }
  const desk = openDesk(spawn, overtaken, (reply) => heard.push(reply))
  const port = () => {
    const last = ports.at(-1)
    if (!last) throw new Error('No worker was started.')
    return last
  }
  const lastAsked = (): RunName => {
    const message = port().got.findLast((candidate) => candidate.type === 'ask')
    if (message?.type !== 'ask') throw new Error('Nothing was asked.')
    return { run: message.run, seq: message.seq, inputsHash: message.inputsHash }
  }
  const reply = (message: FromWorker) => port().onmessage?.({ data: message })
  return { desk, ports, heard, port, lastAsked, reply }
}

describe('the desk', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  it('passes on the answer to the run it sent', () => {
    const { desk, heard, lastAsked, reply } = harness()
    const hash = desk.ask(asked(20))
    reply({ type: 'done', ...lastAsked(), answer })
    expect(heard).toMatchObject([{ type: 'done', inputsHash: hash }])
  })

  it('drops a reply of another run, another place in line, or other inputs', () => {
    const { desk, heard, lastAsked, reply } = harness()
    desk.ask(asked(20))
    const name = lastAsked()
    reply({ type: 'done', ...name, run: 'run-99', answer })
    reply({ type: 'done', ...name, seq: name.seq + 1, answer })
    reply({ type: 'done', ...name, inputsHash: '0000000000000000', answer })
    expect(heard).toEqual([])
  })

  it('sends only the latest of the questions that came while a run was let end', () => {
    const { desk, ports, port, lastAsked, reply } = harness()
    desk.ask(asked(20))
    const first = lastAsked()
    desk.ask(asked(21))
    const latest = desk.ask(asked(22))
    expect(port().got).toHaveLength(1)
    reply({ type: 'done', ...first, answer })
    expect(port().got).toHaveLength(2)
    expect(lastAsked().inputsHash).toBe(latest)
    expect(ports).toHaveLength(1)
  })

  it('breaks a run off for a newer question where it should, and hears nothing more of it', () => {
    const { desk, ports, heard, lastAsked } = harness('break off')
    desk.ask(asked(20))
    const overtaken = lastAsked()
    const old = ports[0]
    desk.ask(asked(25))
    expect(old?.ended).toBe(true)
    old?.onmessage?.({ data: { type: 'done', ...overtaken, answer } })
    expect(heard).toEqual([])
    expect(lastAsked().seq).toBe(overtaken.seq + 1)
  })

  it('tells that a run was stopped, and ends a worker that is too busy to hear it', () => {
    const { desk, ports, heard, port, lastAsked } = harness()
    desk.ask(asked(20))
    const { run } = lastAsked()
    desk.cancel()
    expect(port().got.at(-1)).toEqual({ type: 'cancel', run })
    expect(heard).toEqual([])
    vi.advanceTimersByTime(200)
    expect(ports[0]?.ended).toBe(true)
    expect(heard).toMatchObject([{ type: 'failed', run, issue: { code: 'cancelled' } }])
  })

  it('gives equal inputs one name whatever the members, and other inputs another', () => {
    const { desk } = harness()
    const coarse = desk.ask(asked(20, 24))
    expect(desk.ask(asked(20, 200))).toBe(coarse)
    expect(desk.ask(asked(20.5))).not.toBe(coarse)
  })
})
