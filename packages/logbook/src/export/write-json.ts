import type { Gathered } from './gather.ts'

/** The export as one JSON document, an entry a line; see `exportDocument`. */
export async function* writeJson({ head, entries, attachments, bytesOf }: Gathered): AsyncGenerator<string> {
  yield `${JSON.stringify(head).slice(0, -1)},\n"entries":[`
  for (const [place, entry] of entries.entries()) yield `${place === 0 ? '' : ','}\n${JSON.stringify(entry)}`
  yield '\n],\n"attachments":['
  for (const [place, attachment] of attachments.entries()) {
    const base64 = Buffer.from(await bytesOf(attachment)).toString('base64')
    yield `${place === 0 ? '' : ','}\n${JSON.stringify({ ...attachment, base64 })}`
  }
  yield '\n]}\n'
}
