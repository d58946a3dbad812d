import { describe, expect, it } from 'vitest'
import { exampleLedger } from '../fixtures/example-ledger.ts'
import { exampleOutlook } from '../fixtures/example-outlook.ts'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import type { Model } from './answers.ts'
import { clerk } from './clerk.ts'
import type { FromWorker, Question } from './protocol.ts'

const name = { run: 'run-1', seq: 1, inputsHash: 'abc' }
const whole: Question = {
  kind: 'outlook',
  outlook: questionOf(exampleData),
  coarseMembers: 8,
}

function harness(change: Partial<Model> = {}) {
  const said: FromWorker[] = []
  const waiting: (() => void)[] = []
  const model: Model = {
    outlook: (question, { onProgress }) => {
      onProgress(0.5)
      return exampleOutlook(question, 'x')
    },
    ledger: (_question, span) => exampleLedger(span),
    ...change,
  }
  const { receive } = clerk(
    model,
    (reply) => said.push(reply),
    (next) => waiting.push(next),
  )
  return { said, receive, resume: () => waiting.shift()?.() }
}

const membersOf = (reply: FromWorker | undefined) =>
  reply && 'answer' in reply && 'outlook' in reply.answer ? reply.answer.outlook.members : undefined

describe('the clerk in the worker', () => {
  it('gives a coarse answer first, then the whole one, with progress between', () => {
    const { said, receive, resume } = harness()
    receive({ type: 'ask', ...name, question: whole })
    resume()
    expect(said.map(({ type }) => type)).toEqual(['progress', 'partial', 'progress', 'done'])
    expect(membersOf(said[1])).toBe(8)
    expect(membersOf(said[3])).toBe(whole.outlook.members)
    for (const reply of said) expect(reply).toMatchObject(name)
  })

  it('stops between the two when it is told to', () => {
    const { said, receive, resume } = harness()
    receive({ type: 'ask', ...name, question: whole })
    receive({ type: 'cancel', run: name.run })
    resume()
    expect(said.at(-1)).toMatchObject({ type: 'failed', issue: { code: 'cancelled' } })
  })

  it('passes an issue of the packages on as data', () => {
    const issue = {
      code: 'no-water',
      where: 'Vessel "display"',
      got: '0 L',
      accepted: 'above 0 L',
      next: 'Correct the description.',
    }
    const { said, receive } = harness({
      outlook: () => {
        throw issue
      },
    })
    receive({ type: 'ask', ...name, question: { kind: 'outlook', outlook: questionOf(exampleData) } })
    expect(said).toEqual([{ type: 'failed', ...name, issue }])
  })

  it('says what happened when something failed that nobody foresaw', () => {
    const { said, receive } = harness({
      ledger: () => {
        throw new Error('index out of range')
      },
    })
    receive({
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
