import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { logbookConformance } from '../conformance/logbook.ts'
import type { Logbook } from '../logbook.ts'
import { openLogbook } from './open.ts'

logbookConformance('one SQLite file', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'log-'))
  const open: Logbook[] = []
  return {
    async open(workspace, clock) {
      const opened = openLogbook({ folder, workspace, clock })
      if (!opened.ok) throw new Error(JSON.stringify(opened.issues))
      open.push(opened.logbook)
      return opened.logbook
    },
    async remove() {
      for (const logbook of open) await logbook.close()
      await rm(folder, { recursive: true })
    },
  }
})
