/** How quick a log of 100,000 entries in one system is, in a file and on a database server. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Entry, JournalSearch, journalPage, type Logbook, systemLog } from '@holdfast/logbook'
import { nitrate } from '@holdfast/logbook/conformance/nitrate.ts'
import { openStore } from '@holdfast/logbook/open'
import { postgresBinaries } from '@holdfast/logbook/testing/postgres-binaries.ts'
import { postgresServer } from '@holdfast/logbook/testing/postgres-server.ts'
import { table } from './table.ts'

const entries = 100_000
const ofDay = 25

/** Prints a column for each engine that this machine has. */
export async function recordBench(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'record-bench-'))
  const binaries = postgresBinaries()
  const server = binaries === undefined ? undefined : await postgresServer(binaries)
  try {
    const columns = [
      ['ms', ...labels],
      ['SQLite', ...(await timesOf({ folder }))],
    ]
    if (server !== undefined) {
      const databaseUrl = await server.newDatabase()
      columns.push(['PostgreSQL', ...(await timesOf({ folder, databaseUrl }))])
    }
    console.log(table(columns[0].map((_, row) => columns.map((column) => column[row]))))
    console.log('\nThe list is to come in under 100 ms.')
  } finally {
    await server?.remove()
    await rm(folder, { recursive: true })
  }
}

const labels = [
  `${entries} entries stored, 1000 a sending`,
  'opened, and read whole for damage',
  'the list: newest 100 lines',
  'the list again',
  '100 lines of ten years ago',
  'the first search',
  'a search that finds nothing',
  'the next search',
  'what the model takes',
  'one entry stored',
  'all entries read',
]

async function timesOf(place: {
  readonly folder: string
  readonly databaseUrl?: string
}): Promise<readonly string[]> {
  const fill = await opened(place)
  const stored = await time(async () => {
    for (let first = 0; first < entries; first += 1000) await fill.append(sending(first))
  })
  await fill.close()
  let log: Logbook = fill
  const open = await time(async () => {
    log = await opened(place)
  })
  const list = (before?: string): Promise<unknown> => {
    const question = { system: 'reef', limit: 100, ...(before !== undefined && { before }) }
    return journalPage(log, question, new JournalSearch(log))
  }
  const search = new JournalSearch(log)
  const times = [
    stored,
    open,
    await time(() => list()),
    await time(() => list()),
    await time(() => list('2016-03-01.999999')),
    await time(() => search.find({ system: 'reef' }, 'nitrate', 100)),
    await time(() => search.find({ system: 'reef' }, 'hydrometer', 100)),
    await time(() => search.find({ system: 'reef' }, 'nitrate 5', 100)),
    await time(async () => systemLog(await log.read({ system: 'reef' }))),
    await time(() => log.append([nitrate(entries)])),
    await time(() => log.read({ system: 'reef' })),
  ]
  await log.close()
  return times.map((milliseconds) => milliseconds.toFixed(1))
}

/** 1000 readings, 25 a day, one in a hundred a correction of the one before. */
function sending(first: number): readonly Entry[] {
  return Array.from({ length: 1000 }, (_, place) => {
    const number = first + place
    const at = new Date(Date.UTC(2015, 0, 1 + Math.floor(number / ofDay))).toISOString().slice(0, 10)
    return nitrate(number, { at, ...(number % 100 === 99 && { replaces: nitrate(number - 1).id }) })
  })
}

async function opened(place: { readonly folder: string; readonly databaseUrl?: string }): Promise<Logbook> {
  const found = await openStore(place)
  if (!found.ok) throw new Error(JSON.stringify(found.issues))
  return found.logbook
}

async function time(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now()
  await work()
  return performance.now() - began
}
