import { commissioning, startUpQuestion } from '@holdfast/commissioning'
import { ledgerOf, type OutlookQuestion, outlook, outlookFrom, past } from '@holdfast/inference'
import { expect, it, vi } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import type { Asking, BandedRow, LedgerAnswer, OutlookAnswer } from './answers.ts'
import { openCrew, type Second } from './crew.ts'
import { openModel } from './model.ts'
import { second } from './second.ts'

// Each works a past out several times over, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 })

const question: OutlookQuestion = { ...questionOf(exampleData), horizonDays: 3, members: 8 }
const moved = { ...question, levers: { waterChange: { volume_L: 60, every_days: 7 } } }
const span = { from: question.asOf - 4, to: question.asOf }
const pause = () => new Promise<void>((resolve) => setImmediate(resolve))

const nameOf = ({ process, instance, atom, from, to }: BandedRow) =>
  [process, instance, atom, from, to].join('|')

/** As a worker has it: what is sent is a copy, and comes later. */
function elsewhere(): Second {
  const run = second()
  const one: Second = {
    postMessage: (asked) => {
      const copy = structuredClone(asked)
      setImmediate(() => one.onmessage?.({ data: structuredClone(run(copy)) }))
    },
    onmessage: null,
    onerror: null,
  }
  return one
}

/** A second worker that cannot be loaded. */
function broken(): Second {
  const one: Second = {
    postMessage: () => void setImmediate(() => one.onerror?.()),
    onmessage: null,
    onerror: null,
  }
  return one
}

function asking<Answer>(firstMembers?: number): Asking<Answer> & { readonly firsts: Answer[] } {
  const firsts: Answer[] = []
  return {
    firsts,
    ...(firstMembers === undefined ? {} : { firstMembers }),
    first: (answer) => void firsts.push(answer),
    onProgress: () => undefined,
    cancelled: () => false,
  }
}

it('gives the outlook and the ledger of one worker, the same to the bit in two, and where the second is lost', async () => {
  const alone = { outlook: outlook(question), ledger: ledgerOf(question, span) }
  for (const start of [() => undefined, elsewhere, broken]) {
    const model = openModel(openCrew(start, pause))
    expect(await model.outlook(question, asking())).toEqual(alone.outlook)
    expect(await model.ledger(question, span, asking())).toEqual(alone.ledger)
  }
})

it('lets the members of the outlook keep the books of a long span, the first of them first', async () => {
  const few = { ...question, members: 4 }
  const year = { from: question.asOf - 190, to: question.asOf }
  const whole = ledgerOf(few, year)
  for (const start of [() => undefined, elsewhere]) {
    const shares: number[] = []
    const asked = {
      ...asking<LedgerAnswer>(2),
      onProgress: (share: number) => void shares.push(share),
    }
    expect(await openModel(openCrew(start, pause)).ledger(few, year, asked)).toEqual(whole)
    expect(asked.firsts.map(({ members }) => members)).toEqual([2])
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    for (const row of asked.firsts[0].ledger.rows) {
      const inAll = whole.ledger.rows.find((one) => nameOf(one) === nameOf(row))
      expect(inAll?.members.slice(0, 2)).toEqual(row.members)
    }
  }
})

it('fits a few members first where a long span is asked of a past that is not known yet', async () => {
  const model = openModel(openCrew(elsewhere, pause))
  const year = { from: question.asOf - 190, to: question.asOf }
  const before = asking<LedgerAnswer>(1)
  const whole = await model.ledger(question, year, before)
  const few = ledgerOf({ ...question, members: 4 }, year).ledger.rows[0]
  expect(before.firsts.map(({ ledger }) => ledger.rows[0].members)).toEqual([
    few.members.slice(0, 1),
    whole.ledger.rows[0].members.slice(0, 1),
  ])
  const after = asking<LedgerAnswer>(1)
  expect(await model.ledger(question, year, after)).toEqual(whole)
  expect(after.firsts).toHaveLength(1)
})

it('first gives an ensemble of few, and once the past is known the first of the whole', async () => {
  const model = openModel(openCrew(elsewhere, pause))
  const before = asking<OutlookAnswer>(4)
  await model.outlook(question, before)
  expect(before.firsts).toEqual([outlook({ ...question, members: 4 })])
  const known = past(question)
  const after = asking<OutlookAnswer>(4)
  expect(await model.outlook(moved, after)).toEqual(outlookFrom(known, moved))
  expect(after.firsts.map(({ outlook }) => outlook.members)).toEqual([4])
})

it('stops between slices when it is overtaken, and keeps the past it worked at', async () => {
  const model = openModel(openCrew(elsewhere, pause))
  await model.outlook(question, asking())
  const overtaken = { ...asking<OutlookAnswer>(4), cancelled: () => true }
  await expect(model.outlook(moved, overtaken)).rejects.toMatchObject({ code: 'cancelled' })
  const shares: number[] = []
  await model.outlook(moved, { ...asking(4), onProgress: (share) => void shares.push(share) })
  expect(shares[0]).toBeGreaterThan(0.8)
})

it('gives the start-up as the packages give it, and the outlook after it as ever', async () => {
  const model = openModel(openCrew(() => undefined, pause))
  const { startUp } = await model.startUp(question, asking())
  expect(startUp).toEqual(commissioning(past(startUpQuestion(question)), question))
  expect(await model.outlook(question, asking())).toEqual(outlook(question))
})
