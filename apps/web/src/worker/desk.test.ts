import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import type { OutlookAnswer } from './answers.ts'
import { openDesk, type Port } from './desk.ts'
import type { FromWorker, Question, RunName, ToWorker } from './protocol.ts'

const asked = (volume_L: number, members = 24): Question => ({
  kind: 'outlook',
  outlook: { ...questionOf(exampleData, { waterChange: { volume_L, every_days: 7 } }), members },
})

/** The desk passes answers on and never looks into them. */
const answer = {} as OutlookAnswer

function harness() {
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
  const desk = openDesk(spawn, (reply) => heard.push(reply))
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

  it('lets a first answer come before a newer question overtakes its run', () => {
    const { desk, heard, port, lastAsked, reply } = harness()
    desk.ask(asked(20))
    const first = lastAsked()
    desk.ask(asked(21))
    const latest = desk.ask(asked(22))
    expect(port().got).toHaveLength(1)
    reply({ type: 'partial', ...first, answer })
    expect(heard).toMatchObject([{ type: 'partial', run: first.run }])
    expect(port().got).toHaveLength(2)
    expect(lastAsked().inputsHash).toBe(latest)
    reply({ type: 'done', ...first, answer })
    expect(heard).toHaveLength(1)
  })

  it('overtakes at once a run whose first answer is there', () => {
    const { desk, port, lastAsked, reply } = harness()
    desk.ask(asked(20))
    reply({ type: 'partial', ...lastAsked(), answer })
    const newer = desk.ask(asked(25))
    expect(port().got).toHaveLength(2)
    expect(lastAsked().inputsHash).toBe(newer)
  })

  it('keeps the long list of processes that is sent once', () => {
    const { desk, heard, lastAsked, reply } = harness()
    const processes = [{ process: 'feeding' }] as unknown as OutlookAnswer['processes']
    desk.ask(asked(20))
    reply({ type: 'partial', ...lastAsked(), answer: { ...answer, processes } })
    reply({ type: 'done', ...lastAsked(), answer: { ...answer, processes: [] }, sameProcesses: true })
    expect(heard[1]).toMatchObject({ type: 'done', answer: { processes } })
  })

  it('ends the worker of a run that is stopped, tells so, and hears nothing more of it', () => {
    const { desk, ports, heard, port, lastAsked, reply } = harness()
    desk.ask(asked(20))
    const stoppedRun = lastAsked()
    const [old] = ports
    desk.cancel()
    expect(old?.ended).toBe(true)
    expect(heard).toMatchObject([{ type: 'failed', run: stoppedRun.run, issue: { code: 'cancelled' } }])
    old?.onmessage?.({ data: { type: 'done', ...stoppedRun, answer } })
    expect(heard).toHaveLength(1)
    desk.ask(asked(21))
    reply({ type: 'done', ...lastAsked(), answer })
    expect(heard.at(-1)).toMatchObject({ type: 'done' })
    expect(port().got).toHaveLength(1)
  })

  it('gives equal inputs one name whatever the members, and other inputs another', () => {
    const { desk } = harness()
    const coarse = desk.ask(asked(20, 24))
    expect(desk.ask(asked(20, 200))).toBe(coarse)
    expect(desk.ask(asked(20.5))).not.toBe(coarse)
  })
})
