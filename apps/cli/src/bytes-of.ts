import { readFile } from 'node:fs/promises'
import { refuse } from './refuse.ts'

/** The bytes of a file. @throws Refused in words when it cannot be read */
export async function bytesOf(path: string): Promise<Buffer> {
  try {
    return await readFile(path)
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
