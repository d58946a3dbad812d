import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest'

import { keptLog, opened, temporaryFolder } from '../copies/testing/kept-log.ts'
import type { Logbook } from '../logbook.ts'
import { openPostgres } from '../postgres/open.ts'
import { postgresBinaries } from '../testing/postgres-binaries.ts'
import { type PostgresServer, postgresServer } from '../testing/postgres-server.ts'
import { exported, formats, samples, takenOver } from './testing/there-and-back.ts'

const binaries = postgresBinaries()
const isMissing = binaries === undefined && process.env.CI !== 'true'
const asked = isMissing ? ' (skipped: none is here; HOLDFAST_POSTGRES names the folder of its programs)' : ''

describe.skipIf(isMissing)(`a file and a PostgreSQL server${asked}`, () => {
  let server: PostgresServer
  beforeAll(async () => {
    if (binaries === undefined) throw new Error('in CI a missing PostgreSQL is a failure')
    server = await postgresServer(binaries)
  }, 60_000)
  afterAll(() => server?.remove())

  async function onServer(workspace: string): Promise<Logbook> {
    const found = await openPostgres({ url: await server.newDatabase(), workspace })
    if (!found.ok) throw new Error(JSON.stringify(found.issues))
    onTestFinished(() => found.logbook.close())
    return found.logbook
  }

  test.each(formats)('give each other the same log as %s, whatever the workspace', async (format) => {
    const { logbook: file } = await keptLog(3)
    await file.append(samples)
    const club = await onServer('club')
    await takenOver(club, await exported(file, format))
    const back = opened(temporaryFolder())
    await takenOver(back, await exported(club, format))
    expect(await back.asSent()).toEqual(await file.asSent())
    const [attached] = await file.attachments()
    expect(await back.attachment(attached.sha256)).toEqual(await file.attachment(attached.sha256))
  })
})
