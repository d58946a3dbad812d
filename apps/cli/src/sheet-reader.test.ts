import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildProgram, temporaryFolder } from '@holdfast/testing'
import { beforeAll, expect, test, vi } from 'vitest'
import { sheetReader } from './sheet-reader.ts'
import { runCli } from './testing/run-cli.ts'
import { fileWith, systemFile } from './testing/small-reef.ts'

// Each command is a process of its own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 60_000 })

let program = ''
beforeAll(async () => {
  program = await buildProgram('apps/cli/src/main.ts', 'cli-sheet-reader')
}, 60_000)

/** A log that a probe wrote every five minutes. */
function probeLog(rows: number): string {
  const lines = ['Date,Time,Temperature (°C),pH,Salinity (psu)']
  for (let row = 0; row < rows; row++) {
    const [day = '', time = ''] = new Date(Date.UTC(2020, 0, 1) + row * 300_000).toISOString().split('T')
    const values = [25 + (row % 7) / 10, 8 + (row % 11) / 100, 34.5 + (row % 5) / 10]
    lines.push([day, time.slice(0, 5), ...values.map((value) => value.toFixed(2))].join(','))
  }
  return lines.join('\n')
}

test('a long sheet says how far it is, and an interrupt ends it there with nothing stored', async () => {
  const data = temporaryFolder()
  await runCli(program, ['system', 'add', systemFile(), '--from', '2020-01-01'], data)
  const file = fileWith('probe.csv', probeLog(300_000))
  const stopped = await runCli(program, ['import', file, '--yes'], data, /Reading probe\.csv: \d+ %/)
  // ended by the interrupt itself: it waits for no stage of the reading
  expect(stopped).toMatchObject({ signal: 'SIGINT', out: '' })
  const left = join(temporaryFolder(), 'left.json')
  expect(await runCli(program, ['export', left], data)).toMatchObject({ code: 0 })
  const { entries } = JSON.parse(readFileSync(left, 'utf8'))
  expect(entries).toHaveLength(1)
})

test('a sheet that takes more memory than its thread may is refused with what to do', async () => {
  const silent = { out: () => undefined, err: () => undefined, redraws: false, agrees: async () => undefined }
  const bytes = new TextEncoder().encode(probeLog(60_000))
  const read = sheetReader(bytes, 'probe.csv', silent, { program, memory: 24 })
  await expect(read({})).rejects.toMatchObject({
    issues: [
      {
        code: 'too-large',
        where: 'Sheet "probe.csv"',
        got: 'it takes more memory than 24 MB to read',
        next: 'Save each year as a file of its own and import one after the other. Nothing is stored.',
      },
    ],
  })
})
