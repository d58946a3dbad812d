import { describe, expect, it } from 'vitest'
import { exampleLedger } from '../fixtures/example-ledger.ts'
import { exampleOutlook } from '../fixtures/example-outlook.ts'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import type { Model } from './answers.ts'
import { clerk } from './clerk.ts'
import { type FromWorker, type Question, stopped } from './protocol.ts'

const name = { run: 'run-1', seq: 1, inputsHash: 'abc' }
const whole: Question = { kind: 'outlook', outlook: questionOf(exampleData), firstMembers: 8 }

function harness(change: Partial<Model> = {}) {
  const said: FromWorker[] = []
  const model: Model = {
    outlook: async (question, { firstMembers, first, onProgress, cancelled }) => {
      if (firstMembers !== undefined)
        first(exampleOutlook({ ...question, members: firstMembers }, 'its first answer'))
      await undefined
      if (cancelled()) throw stopped
      onProgress(0.5)
      return exampleOutlook(question, 'its whole answer')
    },
    ledger: async (_question, span) => exampleLedger(span),
    ladder: async () => {
      throw new Error('no ladder is asked for')
    },
    startUp: async () => {
      throw new Error('no start-up is asked for')
    },
    crew: async () => {
      throw new Error('no crew is asked for')
    },
    reach: async () => {
      throw new Error('no reach is asked for')
    },
    rest: () => undefined,
    ...change,
  }
  return { said, ...clerk(model, (reply) => said.push(reply)) }
}

const membersOf = (reply: FromWorker | undefined) =>
  reply && 'answer' in reply && 'outlook' in reply.answer ? reply.answer.outlook.members : undefined

describe('the clerk in the worker', () => {
  it('gives an answer of the first members, then the whole one, with progress between', async () => {
    const { said, receive } = harness()
    await receive({ type: 'ask', ...name, question: whole })
    expect(said.map(({ type }) => type)).toEqual(['partial', 'progress', 'done'])
    expect(membersOf(said[0])).toBe(8)
    expect(membersOf(said[2])).toBe(whole.outlook.members)
    for (const reply of said) expect(reply).toMatchObject(name)
  })

  it('sends the processes with the first of its answers that rests on them', async () => {
    const processes = exampleLedger({ from: 1, to: 2 }).processes
    const { said, receive } = harness({
      outlook: async (question) => ({ ...exampleOutlook(question, 'x'), processes }),
    })
    await receive({ type: 'ask', ...name, question: whole })
    await receive({ type: 'ask', ...name, question: whole })
    expect(said).toMatchObject([
      { type: 'done', answer: { processes } },
      { type: 'done', answer: { processes: [] }, sameProcesses: true },
    ])
  })

  it('drops what is left of a question when a newer one comes', async () => {
    const { said, receive } = harness()
    const newer = { run: 'run-2', seq: 2, inputsHash: 'abd' }
    await Promise.all([
      receive({ type: 'ask', ...name, question: whole }),
      receive({ type: 'ask', ...newer, question: whole }),
    ])
    expect(said.filter(({ run }) => run === name.run).map(({ type }) => type)).toEqual(['partial', 'failed'])
    expect(said.at(-1)).toMatchObject({ type: 'done', ...newer })
  })

  it('passes an issue of the packages on as data', async () => {
    const issue = {
      code: 'no-water',
      where: 'Vessel "display"',
      got: '0 L',
      accepted: 'above 0 L',
      next: 'Correct the description.',
    }
    const { said, receive } = harness({
      outlook: async () => {
        throw issue
      },
    })
    await receive({ type: 'ask', ...name, question: { kind: 'outlook', outlook: questionOf(exampleData) } })
    expect(said).toEqual([{ type: 'failed', ...name, issue }])
  })

  it('says what happened when something failed that nobody foresaw', async () => {
    const { said, receive } = harness({
      ledger: async () => {
        throw new Error('index out of range')
      },
    })
    await receive({
      type: 'ask',
      ...name,
      question: { kind: 'ledger', outlook: questionOf(exampleData), span: { from: 1, to: 2 } },
    })
    expect(said[0]).toMatchObject({
      type: 'failed',
      issue: { code: 'unexpected', got: 'index out of range' },
    })
  })
})
