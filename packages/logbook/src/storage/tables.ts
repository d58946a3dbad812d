import type { Attachment } from '../logbook.ts'

/** The tables that both engines have; each adapter's migrations make them. */
export interface Tables {
  readonly entry: EntryRow
  readonly attachment: AttachmentRow
  readonly cache: CacheRow
}

/** An entry as it is stored. All but the document is taken out of it for the sake of searching. */
export interface EntryRow {
  readonly workspace: string
  readonly id: string
  /** 1, 2, 3 … within the workspace: the order in which entries came. */
  readonly receipt: number
  readonly system: string
  readonly kind: string
  /** The civil day of `at`. */
  readonly day: string
  readonly known_at: string
  readonly replaces: string | null
  /** The entry as it was sent, whole: fields that this version does not know are kept. */
  readonly document: string
  /** SHA-256 of all the above; see `sealOf`. */
  readonly seal: string
}

/** A file kept beside the entries; where its bytes lie is the adapter's. */
export interface AttachmentRow extends Attachment {
  readonly workspace: string
  /** SHA-256 of all the above; see `sealOf`. */
  readonly seal: string
}

/** Something that may be forgotten. */
export interface CacheRow {
  readonly workspace: string
  readonly key: string
  /** Its SHA-256, then the document in UTF-8; see `cachedBytes`. Each driver has its own sort of bytes. */
  readonly document: Uint8Array | ArrayBuffer
}
