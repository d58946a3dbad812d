import { isExport, readExport } from '@holdfast/logbook/export'
import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'

test.each(['json', 'csv', 'xlsx'])(
  'the whole log is given as %s, to be saved under its day',
  async (format) => {
    const { server, logbook } = await served()
    const answer = await asked(server, `get /api/export.${format}`, `/api/export.${format}`)
    const disposition = answer.headers.get('content-disposition') ?? ''
    const name = /^attachment; filename="(holdfast-\d{4}-\d\d-\d\d\.\w+)"$/.exec(disposition)?.[1] ?? ''
    expect(name).toMatch(new RegExp(`\\.${format}$`))
    const bytes = new Uint8Array(await answer.arrayBuffer())
    expect(isExport(bytes)).toBe(true)
    const read = readExport(bytes)
    if (!read.ok) throw new Error(JSON.stringify(read.issues))
    expect(read.contents.entries.map(({ id }) => id)).toEqual((await logbook.read()).map(({ id }) => id))
  },
)
