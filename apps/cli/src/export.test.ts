import { readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { issueInWords, Refused } from '@holdfast/logbook'
import { temporaryFolder } from '@holdfast/testing'
import { expect, test } from 'vitest'
import { program } from './program.ts'
import { systemFile } from './testing/small-reef.ts'

/** Runs a command in this process, with nobody there to agree. */
async function run(data: string, ...args: readonly string[]) {
  const said: string[] = []
  let code = 0
  const terminal = {
    out: (text: string) => void said.push(text),
    err: (text: string) => void said.push(text),
    redraws: false,
    agrees: async () => undefined,
  }
  try {
    await program(terminal, (end) => {
      code = end
    }).parseAsync(['node', 'holdfast', ...args, '--data', data])
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    said.push(...error.issues.map(issueInWords))
    code = 1
  }
  return { code, said: said.join('\n') }
}

const json = async (data: string, ...args: readonly string[]) =>
  JSON.parse((await run(data, ...args, '--json')).said)

/** A data folder with the reef in the hall, described twice. */
async function withHall(): Promise<string> {
  const data = temporaryFolder()
  for (const from of ['2026-01-01', '2026-02-01'])
    expect(await run(data, 'system', 'add', systemFile(), '--from', from)).toMatchObject({ code: 0 })
  return data
}

test.each(['json', 'csv', 'xlsx'])(
  'a log goes to another machine as %s, is previewed, agreed to, and stored once',
  async (ending) => {
    const [data, there] = [await withHall(), temporaryFolder()]
    const file = join(temporaryFolder(), `log.${ending}`)
    expect(await run(data, 'export', file)).toMatchObject({ code: 0 })
    const preview = await run(there, 'import', file, '--preview')
    expect(preview.said).toContain('whole: 2 entries of hall, 0 attachments')
    expect(preview.said).toContain('Nothing is stored.')
    expect(await run(there, 'import', file)).toMatchObject({ code: 2 })
    expect(await json(there, 'system', 'list')).toEqual([])
    expect(await json(there, 'import', file, '--yes')).toMatchObject({ added: 2, already: 0 })
    expect(await json(there, 'import', file, '--yes')).toMatchObject({ added: 0, already: 2 })
    expect(await json(there, 'system', 'show')).toEqual(await json(data, 'system', 'show'))
  },
)

test('an export that was cut off is refused whole', async () => {
  const [data, there, folder] = [await withHall(), temporaryFolder(), temporaryFolder()]
  const file = join(folder, 'log.json')
  await run(data, 'export', file)
  writeFileSync(file, '{"format":"holdfast-export","version":1,')
  const refused = await run(there, 'import', file, '--yes')
  expect([refused.code, refused.said]).toEqual([1, expect.stringContaining('it cannot be read to its end')])
  expect(await json(there, 'system', 'list')).toEqual([])
})

test('an export in a form there is not is refused, and nothing half written is left', async () => {
  const [data, folder] = [await withHall(), temporaryFolder()]
  const other = await run(data, 'export', join(folder, 'log.ods'))
  expect([other.code, other.said]).toEqual([
    1,
    expect.stringContaining('A name that ends in .json, .csv, .xlsx.'),
  ])
  const nowhere = await run(data, 'export', join(folder, 'missing', 'log.csv'))
  expect([nowhere.code, nowhere.said]).toEqual([1, expect.stringContaining('it could not be written')])
  expect(readdirSync(folder)).toEqual([])
})
