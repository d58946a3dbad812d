import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'

/** Size in bytes and SHA-256 of a file, read in parts. @throws the system's error when it cannot be read */
export async function sumOfFile(file: string): Promise<{ readonly size: number; readonly sha256: string }> {
  const hash = createHash('sha256')
  let size = 0
  for await (const part of createReadStream(file)) {
    hash.update(part)
    size += part.length
  }
  return { size, sha256: hash.digest('hex') }
}
