import { type Where, withLog } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import { folderRecord } from './folder-record.ts'
import type { Record } from './record.ts'
import { serverRecord } from './server-record.ts'

/** Which log, if the keeper names it: of a server or in a folder; and which of its systems. */
export interface WhichLog extends Where {
  readonly server?: string
  readonly system?: string
}

/** Does the work on the log that is meant. A folder that was named goes before a server of the surroundings. */
export async function withRecord<Result>(
  which: WhichLog,
  work: (record: Record) => Promise<Result>,
): Promise<Result> {
  const server = which.server ?? (which.data === undefined ? process.env.HOLDFAST_SERVER : undefined)
  if (!server) return withLog(which, (logbook) => work(folderRecord(logbook)))
  if (!URL.canParse(server) || !/^https?:$/.test(new URL(server).protocol)) {
    const accepted = 'An address such as http://localhost:4173.'
    throw refuse('no-address', 'Server', `"${server}" is no address`, accepted, 'Nothing was changed.')
  }
  return work(serverRecord(server))
}

/**
 * The id of the system named, or of the only one there is.
 *
 * @throws Refused when there is none, no such one, or several and none named
 */
export async function systemOf(record: Record, id: string | undefined): Promise<string> {
  const ids = await record.systems()
  const [only] = ids
  if (only === undefined) {
    const next = 'Describe one in a file and run "holdfast system add FILE".'
    throw refuse('no-system', 'System', 'there is none in this log yet', 'A system that is described.', next)
  }
  if (id === undefined && ids.length === 1) return only
  if (id !== undefined && ids.includes(id)) return id
  const got = id === undefined ? `there are ${ids.length}` : `"${id}" is not in this log`
  throw refuse('which-system', 'System', got, `There are: ${ids.join(', ')}.`, 'Name one with --system.')
}
