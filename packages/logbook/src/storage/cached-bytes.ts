import { createHash } from 'node:crypto'

/** A cached document as it is stored: the SHA-256 of its bytes, then the bytes, in UTF-8. */
export function cachedBytes(document: string): Uint8Array {
  const bytes = Buffer.from(document)
  return Buffer.concat([createHash('sha256').update(bytes).digest(), bytes])
}

/** The document in stored bytes; undefined where the disk changed them, as a cache may be forgotten. */
export function cachedDocument(stored: Uint8Array | ArrayBuffer): string | undefined {
  const bytes = Buffer.from(new Uint8Array(stored))
  const document = bytes.subarray(32)
  const seal = createHash('sha256').update(document).digest()
  return seal.equals(bytes.subarray(0, 32)) ? document.toString() : undefined
}
