import { readFile } from 'node:fs/promises'
import { buffer } from 'node:stream/consumers'
import { refuse } from './refuse.ts'

/** The bytes of a file, or of the standard input for "-". @throws Refused in words when it cannot be read */
export async function bytesOf(path: string): Promise<Buffer> {
  try {
    return path === '-' ? await buffer(process.stdin) : await readFile(path)
  } catch (error) {
    const why = error instanceof Error ? error.message.replace(/,.*$/s, '') : String(error)
    throw refuse(
      'file-not-read',
      `File "${path}"`,
      `it cannot be read (${why})`,
      'A file that you may read.',
      'Look at the name and the folder.',
    )
  }
}
