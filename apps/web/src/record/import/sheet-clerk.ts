import { type Client, outcome } from '@holdfast/client'
import {
  type Entry,
  entriesFromSheet,
  exportFormatOf,
  type ImportInto,
  type Issue,
  noteOfImport,
  readSheet,
  rememberedFor,
  sheetLimits,
} from '@holdfast/logbook'
import type { SystemName } from '../../shell/system-data.ts'
import { batchesOf } from './batches.ts'
import { LogOf, NotAnswered } from './log-of.ts'
import { previewOf } from './preview.ts'
import { type FromWorker, leftOutTank, type Settled, type SheetAsked, type ToWorker } from './protocol.ts'
import { SheetReader, settle } from './settle.ts'

const writer = { by: 'keeper', device: 'browser' } as const

/** What waits to be stored. */
interface Waiting {
  readonly client: Client
  readonly entries: readonly Entry[]
  sent: number
}

/**
 * Reads a sheet inside the worker, holds it against the log and sends what is new. The entries stay here:
 * the page is shown counts and samples, so that a sheet of a million readings leaves it quick.
 */
export class SheetClerk {
  readonly #post: (reply: FromWorker) => void
  readonly #clientFor: (server: string) => Client
  #client: Client | undefined
  #log: LogOf | undefined
  #open: { readonly number: number; readonly reader: SheetReader } | undefined
  #waiting: Waiting | undefined

  constructor(post: (reply: FromWorker) => void, clientFor: (server: string) => Client) {
    this.#post = post
    this.#clientFor = clientFor
  }

  async receive(message: ToWorker): Promise<void> {
    try {
      await (message.type === 'read' ? this.#read(message.asked) : this.#send())
    } catch (error) {
      this.#post({ type: 'failed', issues: error instanceof NotAnswered ? error.issues : [broken(error)] })
    }
  }

  async #read(asked: SheetAsked): Promise<void> {
    this.#waiting = undefined
    this.#client ??= this.#clientFor(asked.server)
    this.#log ??= new LogOf(this.#client)
    this.#post({ type: 'stage', stage: 'reading' })
    const reader = await this.#readerOf(asked)
    if (reader === 'export') return this.#post({ type: 'refused', issues: [isOurs(asked.fileName)] })
    const plain = reader.sheet({})
    if (plain.issues.length > 0) return this.#post({ type: 'refused', issues: plain.issues })

    this.#post({ type: 'stage', stage: 'comparing' })
    const systems = await this.#log.systems()
    const { system = asked.system } = asked.settled ?? {}
    const stored = [...(await this.#log.received(system))]
    // In any of the systems an import may have left its answers.
    for (const { id } of systems) if (id !== system) stored.push(...(await this.#log.notes(id)))
    const remembered = rememberedFor(plain, stored)
    const { settled = { ...remembered, system, leftOut: [] } } = asked
    const tanks = known(settled.tanks, systems)
    for (const id of new Set(Object.values(tanks)))
      if (id !== leftOutTank && id !== system) stored.push(...(await this.#log.received(id)))

    this.#post({ type: 'stage', stage: 'reading' })
    const read = settle(reader, settled.answers)
    const kept: Settled = { ...settled, answers: read.answers, tanks }
    const into = importInto(asked, kept)
    const found = entriesFromSheet(read.sheet, into, stored)
    const note = noteOfImport(read.sheet, kept, into)
    const entries = [...found.entries, ...(note === undefined ? [] : [note])]
    this.#waiting = { client: this.#client, entries, sent: 0 }
    const settledBefore = Object.keys(read.answers).length + Object.keys(tanks).length
    const isRemembered = asked.settled === undefined && settledBefore > 0
    this.#post({ type: 'read', preview: previewOf(read, found, { systems, settled: kept, isRemembered }) })
  }

  async #readerOf({ number, file, fileName }: SheetAsked): Promise<SheetReader | 'export'> {
    if (this.#open?.number === number) return this.#open.reader
    // One byte more than is read at most: the reader refuses it in its own words, and no more is in memory.
    const bytes = new Uint8Array(await file.slice(0, sheetLimits.bytes + 1).arrayBuffer())
    if (exportFormatOf(bytes) !== undefined) return 'export'
    const reader = new SheetReader((answers) => readSheet(bytes, fileName, answers))
    this.#open = { number, reader }
    return reader
  }

  /** Sends on from where it stopped. What arrived without an answer is sent again under the same ids. */
  async #send(): Promise<void> {
    const waiting = this.#waiting
    if (waiting === undefined) return
    const { client, entries } = waiting
    // What the log has changes from here on, whether all of it arrives or not.
    this.#log = undefined
    const of = entries.length
    for (const batch of batchesOf(entries.slice(waiting.sent))) {
      const sent = await outcome(client.POST('/api/entries', { body: { entries: batch } }))
      if (!sent.ok) return this.#post({ type: 'unsent', sent: waiting.sent, of, issues: sent.issues })
      waiting.sent += batch.length
      this.#post({ type: 'sent', sent: waiting.sent, of })
    }
    this.#waiting = undefined
    this.#post({ type: 'stored' })
  }
}

/** A system that is no longer in the log is asked for again. */
const known = (tanks: Settled['tanks'], systems: readonly SystemName[]): Settled['tanks'] =>
  Object.fromEntries(
    Object.entries(tanks).filter(([, of]) => of === leftOutTank || systems.some(({ id }) => id === of)),
  )

function importInto({ workspace, timeZone, batch }: SheetAsked, settled: Settled): ImportInto {
  const { system, tanks, leftOut } = settled
  const placed = Object.entries(tanks).map(([tank, id]) => [tank, id === leftOutTank ? null : id] as const)
  const madeAt = new Date().toISOString()
  const who = { workspace, system, timeZone, batch, madeAt, ...writer }
  return { ...who, leftOut, tanks: Object.fromEntries(placed) }
}

const isOurs = (fileName: string): Issue => ({
  code: 'is-export',
  where: `File "${fileName}"`,
  got: 'it is an export of Holdfast, whole logs and no sheet of tests',
  accepted: 'A spreadsheet.',
  next: 'Bring it back under Copies. Nothing is stored.',
})

/** A defect, or a browser without memory for the sheet: said as it is. */
const broken = (error: unknown): Issue => ({
  code: 'not-read',
  where: 'This sheet',
  got: `it could not be read to its end (${error instanceof Error ? error.message : String(error)})`,
  accepted: '',
  next: 'Save the part with the readings as a file of its own. Nothing is stored.',
})
