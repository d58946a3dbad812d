import { parentPort, Worker, workerData } from 'node:worker_threads'
import { type Answers, type Refused, readSheet, type Sheet } from '@holdfast/logbook'
import { progress } from './progress.ts'
import { refuse } from './refuse.ts'
import type { Terminal } from './terminal.ts'

/** Sheets of text up to this size are read at once, bytes; workbooks never are. */
const small = 1_000_000
/** The program that the thread runs, and what a sheet may take in it, MB; a hostile one then ends its thread. */
interface Thread {
  readonly program: string
  readonly memory: number
}

const usualThread = (): Thread => ({ program: process.argv[1] ?? '', memory: 4096 })

interface Work {
  readonly bytes: Uint8Array
  readonly fileName: string
  readonly answers: Answers
}
type Told = { readonly share: number } | { readonly sheet: Sheet }

/**
 * Reads a sheet under given answers: a large one, or a workbook, in a thread of its own with limited memory.
 * Ctrl-C ends the program with its thread; nothing is stored before a sheet is read.
 */
export function sheetReader(
  bytes: Uint8Array,
  fileName: string,
  terminal: Terminal,
  thread = usualThread(),
): (answers: Answers) => Promise<Sheet> {
  const isSmall = bytes.length <= small && bytes[0] !== 0x50
  return async (answers) => {
    const work: Work = { bytes, fileName, answers }
    return isSmall ? readSheet(bytes, fileName, answers) : await inThread(work, thread, terminal)
  }
}

function inThread(work: Work, { program, memory }: Thread, terminal: Terminal): Promise<Sheet> {
  const { onProgress, done } = progress(terminal, `Reading ${work.fileName}`)
  const worker = new Worker(program, {
    workerData: work,
    resourceLimits: { maxOldGenerationSizeMb: memory },
  })
  const read = new Promise<Sheet>((resolve, reject) => {
    worker.on('message', (told: Told) => {
      if ('sheet' in told) resolve(told.sheet)
      else onProgress?.(told.share)
    })
    worker.on('error', (error: NodeJS.ErrnoException) => {
      reject(error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? tooLarge(work.fileName, memory) : error)
    })
  })
  return read.finally(async () => {
    done()
    await worker.terminate()
  })
}

function tooLarge(fileName: string, memory: number): Refused {
  const got = `it takes more memory than ${memory} MB to read`
  const next = 'Save each year as a file of its own and import one after the other. Nothing is stored.'
  return refuse('too-large', `Sheet "${fileName}"`, got, 'A sheet that a person kept.', next)
}

/** The work of the thread. */
export function readInThread(): void {
  const { bytes, fileName, answers } = workerData as Work
  const tell = (told: Told): void => parentPort?.postMessage(told)
  tell({ sheet: readSheet(bytes, fileName, answers, (share) => tell({ share })) })
}
