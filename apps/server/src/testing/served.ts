import type { Logbook } from '@holdfast/logbook'
import { openLogbook } from '@holdfast/logbook/sqlite'
import { temporaryFolder } from '@holdfast/testing'
import type { Hono } from 'hono'
import { onTestFinished } from 'vitest'
import { app } from '../app.ts'
import { putExamplesIn } from '../example.ts'
import { smallExample } from './small-example.ts'

/** A log with nothing in it, which is closed when the test has ended. */
export function emptyLogbook(): Logbook {
  const opened = openLogbook({ folder: temporaryFolder() })
  if (!opened.ok) throw new Error('not opened')
  onTestFinished(() => opened.logbook.close())
  return opened.logbook
}

/** A server in memory, and what it told whoever mends it. */
export interface Served {
  readonly server: Hono
  readonly logbook: Logbook
  readonly told: readonly unknown[]
}

/** The server over a log with the small example in it. */
export async function served(logbook = emptyLogbook(), webFolder = ''): Promise<Served> {
  const told: unknown[] = []
  const tell = (failure: unknown): number => told.push(failure)
  await putExamplesIn(logbook, [smallExample()], new Date())
  return { server: app({ logbook, kept: 'in a test', webFolder, start: 'this one', tell }), logbook, told }
}
