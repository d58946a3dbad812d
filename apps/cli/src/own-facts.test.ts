import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// Each outlook is worked out anew, which a busy machine does slowly.
vi.setConfig({ testTimeout: 60_000 })

const outlookOf = async (data: string) =>
  JSON.parse((await runHere(['outlook', '--days', '2', '--members', '2', '--json'], data)).out)

const ownFact = (fact: string) => ['log', 'fact-override', fact, '0.3', '0.4', '0.5', '1', 'measured']

test('an own value of a fact moves the outlook, one that the catalogue lacks is said, and undo brings the same bits back', async () => {
  const data = temporaryFolder()
  await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  const before = await outlookOf(data)
  const told = await runHere(ownFact('fish.digest_n'), data)
  expect(told).toMatchObject({ code: 0, err: '' })
  const own = await outlookOf(data)
  expect(own.fans).not.toEqual(before.fans)
  expect(own.remarks).toEqual(before.remarks)

  await runHere(ownFact('fish.digest_x'), data)
  const said = 'Your own value of fish.digest_x is not used: the catalogue has no such fact.'
  expect((await outlookOf(data)).remarks.join(' ')).toContain(said)
  const ledger = await runHere(['ledger', '--members', '2'], data)
  expect(ledger.out).toContain(said)

  const { lines } = JSON.parse(
    (await runHere(['log', 'list', '--kind', 'fact-override', '--json'], data)).out,
  )
  expect(lines).toHaveLength(2)
  for (const { entry } of lines) await runHere(['log', 'undo', entry.id], data)
  expect(await outlookOf(data)).toEqual(before)
})
