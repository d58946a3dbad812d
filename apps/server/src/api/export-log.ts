import { Readable } from 'node:stream'
import { type ExportFormat, exportFormats, exportLog } from '@holdfast/logbook/export'
import { type Route, route } from './route.ts'

/** The whole log as a file to be saved: one route for each form. */
export const exportLogAs = (format: ExportFormat): Route =>
  route({
    name: `exportLogAs${format.toUpperCase()}`,
    method: 'get',
    at: `/api/export.${format}`,
    says: `Everything in this log as ${format.toUpperCase()}, for another machine or another program.`,
    answers: { 200: { says: 'A file to be saved.', bytes: true } },
    async answer(_, { logbook }) {
      const now = new Date()
      const parts = exportLog(logbook, format, now)
      // A log that cannot be read is said before anything is sent.
      const first = await parts.next()
      const name = `holdfast-${now.toISOString().slice(0, 10)}.${format}`
      return {
        status: 200,
        body: Readable.toWeb(Readable.from(withFirst(first, parts))) as ReadableStream<Uint8Array>,
        headers: {
          'content-type': exportFormats[format].type,
          'content-disposition': `attachment; filename="${name}"`,
        },
      }
    },
  })

async function* withFirst<Part>(
  first: IteratorResult<Part>,
  rest: AsyncGenerator<Part>,
): AsyncGenerator<Part> {
  if (!first.done) yield first.value
  yield* rest
}
