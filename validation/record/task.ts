/** Where a log of a check lies: a folder, or a database on the check's own server. */
export interface Place {
  readonly folder: string
  readonly databaseUrl?: string
}

/** What the writer is to do; it gets this as its only argument, as JSON. */
export interface Task extends Place {
  /** The number of the first entry to store. */
  readonly first: number
  readonly count: number
  /** An instant to wait for before opening, in milliseconds, so that several open at once. */
  readonly openAt?: number
  /** How far the clock of the writer is behind, in milliseconds. */
  readonly clockBehind?: number
  /** A file to fill the disk with after half of the entries, and to remove when an entry was refused. */
  readonly fillDisk?: string
}

/** What the writer found in the log when it had opened it. */
export interface Held {
  /** Number and time of receipt of each entry, in the order of receipt. */
  readonly entries: readonly (readonly [number, string])[]
  /** Names of the attachments whose bytes are theirs. */
  readonly attachments: readonly string[]
}
