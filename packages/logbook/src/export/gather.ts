import { Refused } from '../issue.ts'
import type { Attachment, Kept, Logbook } from '../logbook.ts'
import { exportVersion } from './document.ts'

/** What opens every export, in whichever form. */
export interface Head {
  readonly format: 'holdfast-export'
  readonly version: number
  readonly workspace: string
  /** An ISO instant. */
  readonly madeAt: string
  /** Attachments that are damaged or gone, by their SHA-256: the one thing that an export can lack. */
  readonly leftOut: readonly string[]
}

/** The whole of a log, about to be written. */
export interface Gathered {
  readonly head: Head
  /** As they were sent, in the order of receipt. */
  readonly entries: readonly Kept[]
  readonly attachments: readonly Attachment[]
  /** The bytes of one of `attachments`, which are read one by one: all together may not fit in memory. */
  bytesOf(attachment: Attachment): Promise<Uint8Array>
}

/** Reads all that a log holds. @throws Refused where entries cannot be read */
export async function gather(logbook: Logbook, now: Date): Promise<Gathered> {
  const entries = await logbook.asSent()
  const attachments: Attachment[] = []
  const leftOut: string[] = []
  for (const attachment of await logbook.attachments()) {
    if (await isWhole(logbook, attachment)) attachments.push(attachment)
    else leftOut.push(attachment.sha256)
  }
  const { workspace } = logbook
  return {
    head: {
      format: 'holdfast-export',
      version: exportVersion,
      workspace,
      madeAt: now.toISOString(),
      leftOut,
    },
    entries,
    attachments,
    async bytesOf({ sha256 }) {
      const found = await logbook.attachment(sha256)
      if (found === undefined) throw new Error(`attachment ${sha256} went away while it was exported`)
      return found.bytes
    },
  }
}

async function isWhole(logbook: Logbook, { sha256 }: Attachment): Promise<boolean> {
  try {
    return (await logbook.attachment(sha256)) !== undefined
  } catch (error) {
    if (error instanceof Refused) return false
    throw error
  }
}
