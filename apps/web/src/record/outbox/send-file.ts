import { outcome } from '@holdfast/client'
import { api, told } from '../../shell/api.ts'

/** A file that the log keeps, as an entry names it. */
export interface KeptFile {
  /** SHA-256 of its bytes, 64 hexadecimal digits. */
  readonly sha256: string
  readonly mediaType: string
  readonly name: string
  readonly bytes: number
}

/**
 * Hands a file to the log. Sent twice, it is kept once.
 *
 * @throws Error with a sentence for the page where the log does not take it
 */
export async function sendFile(file: File): Promise<KeptFile> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  // The browser's own sum is there in a secure context only, and a page of the home network is none.
  const { sha256: sumOf } = await import('@noble/hashes/sha2.js')
  const sha256 = Array.from(sumOf(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('')
  const mediaType = file.type || 'application/octet-stream'
  const sent = api.PUT('/api/attachments/{sha256}', {
    params: { path: { sha256 } },
    headers: { 'content-type': mediaType },
    body: bytes,
    bodySerializer: () => bytes,
  })
  told(await outcome(sent))
  return { sha256, mediaType, name: file.name || 'picture', bytes: bytes.length }
}
