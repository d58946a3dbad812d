import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'
import { nitrate, said, send } from './testing/keeper.ts'

test('every entry comes as it was received, with what takes others back', async () => {
  const { server } = await served()
  const reading = nitrate('12 mg/L NO3', { at: '2026-01-02' })
  const undo = { ...nitrate('1 mg/L NO3'), kind: 'retraction', body: { of: 'entry', id: reading.id } }
  await send(server, { entries: [reading] })
  await send(server, { entries: [undo] })
  const route = 'get /api/systems/{system}/received'
  const { entries } = await (await asked(server, route, '/api/systems/example-reef/received')).json()
  expect(entries.at(-2)).toMatchObject({ ...reading, knownAt: expect.any(String) })
  expect(entries.at(-1)).toMatchObject(undo)
  const other = await asked(server, route, '/api/systems/pond/received')
  expect([other.status, await said(other)]).toEqual([404, [expect.stringContaining('"pond"')]])
})
