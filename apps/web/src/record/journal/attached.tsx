import type { BodyOf } from '@holdfast/logbook'

/** What the server gives to be looked at; all else is saved. */
const pictures: ReadonlySet<string> = new Set([
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/gif',
  'image/avif',
])

/** The picture of an entry, or the way to its file. */
export function Attached({ of: { sha256, mediaType, name, text } }: { readonly of: BodyOf<'attachment'> }) {
  const address = `api/attachments/${sha256}`
  return (
    <p>
      <a href={address} download={pictures.has(mediaType) ? undefined : name}>
        {pictures.has(mediaType) ? (
          <img class="attached" src={address} alt={text?.trim() || name} loading="lazy" />
        ) : (
          `Save ${name}`
        )}
      </a>
    </p>
  )
}
