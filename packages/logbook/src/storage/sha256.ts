import { createHash } from 'node:crypto'

/** SHA-256 as 64 hexadecimal digits. */
export function sha256(of: string | Uint8Array): string {
  return createHash('sha256').update(of).digest('hex')
}
