import { sha256 } from './put-attachment.ts'
import { route } from './route.ts'
import { refusal } from './schemas.ts'

/** What a page may show; a drawing in SVG or a page could hold scripts, and is only saved. */
const shown = new Set(['image/jpeg', 'image/png', 'image/webp', 'image/gif', 'image/avif'])

export const getAttachment = route({
  name: 'getAttachment',
  method: 'get',
  at: '/api/attachments/{sha256}',
  says: 'A file that was kept.',
  path: sha256,
  answers: {
    200: { says: 'Its bytes: pictures under their media type, all else as a file to be saved.', bytes: true },
    404: { says: 'There is no such file.', schema: refusal },
  },
  async answer({ path }, { logbook }) {
    const found = await logbook.attachment(path.sha256)
    if (found === undefined) {
      const issue = {
        code: 'no-attachment',
        where: 'Attachment',
        got: `${path.sha256} is not in this log`,
        accepted: 'One that an entry of this log names.',
        next: '',
      }
      return { status: 404, body: { issues: [issue] } }
    }
    const headers: Record<string, string> = shown.has(found.type)
      ? { 'content-type': found.type }
      : { 'content-type': 'application/octet-stream', 'content-disposition': 'attachment' }
    // The name is the sum of the bytes, so they never change.
    headers['cache-control'] = 'private, max-age=31536000, immutable'
    return { status: 200, body: new Uint8Array(found.bytes), headers }
  },
})
