import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'
import { said } from './testing/keeper.ts'

const at = '/api/attachments/{sha256}'
const bytes = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>')
const name = createHash('sha256').update(bytes).digest('hex')

test('a file is kept under the sum of its bytes and given back', async () => {
  const { server } = await served()
  const put = { headers: { 'content-type': 'image/png' }, body: bytes }
  const kept = await asked(server, `put ${at}`, `/api/attachments/${name}`, put)
  expect(await kept.json()).toEqual({ sha256: name, type: 'image/png', size: bytes.length })
  const got = await asked(server, `get ${at}`, `/api/attachments/${name}`)
  expect(new Uint8Array(await got.arrayBuffer())).toEqual(bytes)
  expect(got.headers.get('content-type')).toBe('image/png')
  expect(got.headers.get('cache-control')).toContain('immutable')
  expect(got.headers.get('content-security-policy')).toContain("default-src 'none'")
})

test('what could hold a script is given to be saved, not shown', async () => {
  const { server } = await served()
  for (const type of ['image/svg+xml', 'text/html', 'text/javascript', 'application/pdf']) {
    const own = new TextEncoder().encode(type)
    const sum = createHash('sha256').update(own).digest('hex')
    const put = { headers: { 'content-type': type }, body: own }
    expect((await asked(server, `put ${at}`, `/api/attachments/${sum}`, put)).status).toBe(200)
    const { headers } = await asked(server, `get ${at}`, `/api/attachments/${sum}`)
    expect(headers.get('content-type')).toBe('application/octet-stream')
    expect(headers.get('content-disposition')).toBe('attachment')
  }
})

test('bytes that are not those of the address, too many, or not there are refused in words', async () => {
  const { server, logbook } = await served()
  const cut = await asked(server, `put ${at}`, `/api/attachments/${name}`, { body: bytes.slice(0, 9) })
  expect([cut.status, await said(cut)]).toEqual([422, [expect.stringMatching(/^Attachment: its bytes have/)]])
  const large = new Uint8Array(20 * 1024 * 1024 + 1)
  const refused = await asked(server, `put ${at}`, `/api/attachments/${name}`, { body: large })
  expect([refused.status, await said(refused)]).toEqual([413, [expect.stringContaining('20480 kB')]])
  const wrong = await asked(server, `get ${at}`, '/api/attachments/picture.png')
  expect([wrong.status, await said(wrong)]).toEqual([400, [expect.stringContaining('64 hexadecimal digits')]])
  const none = await asked(server, `get ${at}`, `/api/attachments/${name}`)
  expect([none.status, await said(none)]).toEqual([404, [expect.stringMatching(/^Attachment: /)]])
  expect(await logbook.attachments()).toEqual([])
})
