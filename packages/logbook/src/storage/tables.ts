/** The tables that both engines have; each adapter's migrations make them. */
export interface Tables {
  readonly entry: EntryRow
  readonly attachment: AttachmentRow
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

/** A file kept beside the entries; where its bytes lie is the adapter's. */
export interface AttachmentRow {
  readonly workspace: string
  readonly sha256: string
  readonly type: string
  readonly size: number
}
