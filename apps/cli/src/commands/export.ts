import { createWriteStream } from 'node:fs'
import { rename, rm } from 'node:fs/promises'
import { extname } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { exportFormats, exportLog, isExportFormat } from '@holdfast/logbook/export'
import { type Where, withLog } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import type { Terminal } from '../terminal.ts'

/** Writes the whole log into a file of the form that its name ends in; an earlier file is replaced at the end. */
export async function exportCommand(
  path: string,
  options: Where & { readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  const format = extname(path).slice(1).toLowerCase()
  if (!isExportFormat(format)) {
    const accepted = `A name that ends in ${Object.keys(exportFormats)
      .map((ending) => `.${ending}`)
      .join(', ')}.`
    throw refuse(
      'export-form',
      `File "${path}"`,
      'its ending names no form of an export',
      accepted,
      'Name it so.',
    )
  }
  const unfinished = `${path}.${process.pid}.unfinished`
  const written = await withLog(options, async (logbook) => {
    const entries = await logbook.received()
    try {
      const file = createWriteStream(unfinished, { flush: true })
      await pipeline(Readable.from(exportLog(logbook, format, new Date())), file)
      await rename(unfinished, path)
      return { entries, bytes: file.bytesWritten }
    } catch (error) {
      await rm(unfinished, { force: true })
      throw fileNotWritten(path, error)
    }
  })
  terminal.out(
    options.json
      ? JSON.stringify({ file: path, format, ...written })
      : `Exported ${written.entries} entries to ${path}. On another machine: holdfast import "${path}"`,
  )
}

/** Only what the disk says is about the file; a log that cannot be read speaks for itself. */
function fileNotWritten(path: string, error: unknown): unknown {
  if (!(error instanceof Error && 'errno' in error)) return error
  return refuse(
    'file-not-written',
    `File "${path}"`,
    `it could not be written (${error.message})`,
    'A folder in which you may write, on a disk with room.',
    'Free some room or name another place. An earlier file of that name is as it was.',
  )
}
