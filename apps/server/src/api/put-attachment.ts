import { createHash } from 'node:crypto'
import { z } from 'zod'
import { route } from './route.ts'
import { refusal } from './schemas.ts'

/** The SHA-256 of bytes names them in the address. */
export const sha256 = z.object({
  sha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe('SHA-256 of the bytes, 64 hexadecimal digits in small letters.'),
})

export const putAttachment = route({
  name: 'putAttachment',
  method: 'put',
  at: '/api/attachments/{sha256}',
  says: 'Keeps a file, such as a picture, under the sum of its bytes; sent twice, it is kept once.',
  path: sha256,
  brings: { says: 'The bytes, with their media type.', most: 20 * 1024 * 1024 },
  answers: {
    200: {
      says: 'On the disk.',
      schema: z.object({
        sha256: z.string(),
        type: z.string().describe('Media type as the first who sent it gave it.'),
        size: z.int().describe('Bytes.'),
      }),
    },
    422: { says: 'Nothing was stored.', schema: refusal },
  },
  async answer({ path, body, type }, { logbook }) {
    const bytes = body instanceof Uint8Array ? body : new Uint8Array()
    const found = createHash('sha256').update(bytes).digest('hex')
    if (found === path.sha256) {
      const { sha256, size, ...kept } = await logbook.attach(bytes, type || 'application/octet-stream')
      return { status: 200, body: { sha256, type: kept.type, size } }
    }
    const issue = {
      code: 'other-bytes',
      where: 'Attachment',
      got: `its bytes have the sum ${found}`,
      accepted: `Bytes with the sum ${path.sha256}, as in the address.`,
      next: 'Send it again; it may have been cut off. Nothing was stored.',
    }
    return { status: 422, body: { issues: [issue] } }
  },
})
