import type { Attachment } from '../logbook.ts'
import { damagedAttachment } from './damaged-attachment.ts'
import { sealOf } from './seal.ts'
import type { AttachmentRow } from './tables.ts'

/** The row of an attachment. */
export function attachmentRowOf(attachment: Attachment, workspace: string): AttachmentRow {
  const { sha256, type, size } = attachment
  const row = { workspace, sha256, type, size }
  return { ...row, seal: sealOf('attachment', row) }
}

/** The attachment of a row. @throws Refused when the row is not as it was written */
export function attachmentOf(row: AttachmentRow): Attachment {
  const { sha256, type, size, seal } = row
  if (sealOf('attachment', row) === seal) return { sha256, type, size }
  throw damagedAttachment(sha256, 'what is said of it is not what was written')
}
