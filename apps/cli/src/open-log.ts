import { homedir } from 'node:os'
import { type Logbook, Refused, type Stored, type SystemLog, systemLog } from '@holdfast/logbook'
import { backupsOf, wayBack } from '@holdfast/logbook/copies'
import { openStore } from '@holdfast/logbook/open'
import { dataFolder } from '@holdfast/logbook/sqlite'
import { refuse } from './refuse.ts'

/** Where the log lives, if the keeper names it. */
export interface Where {
  readonly data?: string
}

/** The data folder. */
export function folderOf({ data }: Where): string {
  return data ?? dataFolder({ platform: process.platform, home: homedir(), env: process.env })
}

/** Opens the log, does the work, and closes the log in any case. @throws Refused when it cannot be opened */
export async function withLog<Result>(
  where: Where,
  work: (logbook: Logbook) => Promise<Result>,
): Promise<Result> {
  // A folder that was named goes before a server that stands in the surroundings.
  const databaseUrl = where.data === undefined ? process.env.DATABASE_URL : undefined
  const opened = await openStore({ folder: folderOf(where), databaseUrl })
  if (!opened.ok) {
    const backups = backupsOf(folderOf(where), process.env)
    throw new Refused(await wayBack(opened.issues, backups, 'holdfast restore --last'))
  }
  try {
    return await work(opened.logbook)
  } finally {
    await opened.logbook.close()
  }
}

/** A system, its log, and all that was stored of it. */
export interface ChosenSystem {
  readonly log: SystemLog
  readonly stored: readonly Stored[]
}

/** Every system that is described. */
export async function allSystems(logbook: Logbook): Promise<readonly ChosenSystem[]> {
  const ids = await logbook.systems()
  const read = await Promise.all(ids.map((id) => logbook.read({ system: id })))
  return read.flatMap((stored) => {
    const log = systemLog(stored)
    return log === undefined ? [] : [{ log, stored }]
  })
}

/**
 * The system named, or the only one there is.
 *
 * @throws Refused when there is none, no such one, or several and none named
 */
export async function chooseSystem(logbook: Logbook, id: string | undefined): Promise<ChosenSystem> {
  const systems = await allSystems(logbook)
  const ids = systems.map(({ log }) => log.system.id)
  if (systems.length === 0) {
    const next = 'Describe one in a file and run "holdfast system add FILE".'
    throw refuse('no-system', 'System', 'there is none in this log yet', 'A system that is described.', next)
  }
  const [only] = systems
  if (id === undefined && only !== undefined && systems.length === 1) return only
  const found = systems.find(({ log }) => log.system.id === id)
  if (found !== undefined) return found
  const got = id === undefined ? `there are ${systems.length}` : `"${id}" is not in this log`
  throw refuse('which-system', 'System', got, `There are: ${ids.join(', ')}.`, 'Name one with --system.')
}
