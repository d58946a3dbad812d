import type { Attachment } from '../logbook.ts'

/** The tables that both engines have; each adapter's migrations make them. */
export interface Tables {
  readonly entry: EntryRow
  /** Where the bytes lie is the adapter's. */
  readonly attachment: Attachment & { readonly workspace: string }
  readonly cache: { readonly workspace: string; readonly key: string; readonly document: string }
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
