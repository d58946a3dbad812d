import { dirname, join } from 'node:path'
import { composeEntry, type Entry } from '@holdfast/logbook'
import { buildProgram, startedServer, temporaryFolder } from '@holdfast/testing'
import { exampleData } from '../src/fixtures/example-system.ts'
import { buildPages } from './example-site.ts'

const { system, workspace } = exampleData

/**
 * Builds the real server with the pages beside it.
 *
 * @param mode  'example' for pages whose model is put together by hand
 * @returns its file
 */
export async function buildServer(
  asker: string,
  mode: 'example' | 'production' = 'production',
): Promise<string> {
  const program = await buildProgram('apps/server/src/main.ts', asker)
  await buildPages(mode, join(dirname(program), 'web'))
  return program
}

/** An entry of the invented system, written by another device on 1 March 2026. */
export const entryOf = (parts: Pick<Entry, 'kind' | 'body'> & Partial<Entry>): Entry =>
  composeEntry(
    {
      workspace,
      system: system.id,
      at: '2026-03-01',
      precision: 'day',
      by: 'keeper',
      device: 'other',
      ...parts,
    },
    new Date('2026-03-01T12:00:00Z'),
  ) as Entry

const description = entryOf({
  kind: 'system',
  at: '2026-01-01',
  body: { tells: 'change', document: {}, system },
})

/** The real server on a log of its own that has the invented system, and some entries. */
export async function serveLog(program: string, entries: readonly Entry[] = []) {
  const folder = temporaryFolder()
  const first = startedServer(program, folder)
  const address = await first.address
  await post(address, [description, ...entries])
  let running = first
  return {
    /** The page of the record. */
    record: `${address}/?place=record`,
    /** Ends the server as a power cut does. */
    async stop() {
      running.child.kill('SIGKILL')
      await running.ended
    },
    /** Starts it again where it was. */
    async start() {
      running = startedServer(program, folder, { PORT: new URL(address).port })
      await running.address
    },
    /** What the log has, the latest day first. */
    async lines(): Promise<
      readonly { readonly says: string; readonly state: string; readonly entry: Entry }[]
    > {
      const answer = await fetch(`${address}/api/systems/${system.id}/entries`)
      const { lines } = await answer.json()
      return lines
    },
    send: (entries: readonly Entry[]) => post(address, entries),
  }
}

async function post(address: string, entries: readonly Entry[]): Promise<void> {
  const answer = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  })
  if (!answer.ok) throw new Error(await answer.text())
}
