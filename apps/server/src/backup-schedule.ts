import { issueInWords, type Logbook, Refused } from '@holdfast/logbook'
import { type Backup, backUp, backupsIn, thinOut } from '@holdfast/logbook/copies'
import type { BackupSettings } from './backup-settings.ts'

const hour = 3_600_000
const day = 24 * hour

/** What is backed up, where to, and who hears of it. */
export interface ScheduleOptions extends BackupSettings {
  readonly logbook: Logbook
  /** The data folder. */
  readonly folder: string
  readonly complain: (line: string) => void
  readonly clock?: () => Date
  /** Milliseconds from the start to the first look; a start is busy enough with the first page. */
  readonly soon?: number
}

/**
 * Backs the log up soon after the start and once a day, when something came since. It looks every hour,
 * so that a machine that slept at the time does it when it wakes.
 *
 * @returns ends the schedule, and waits for a backup that is being made
 */
export function scheduleBackups(options: ScheduleOptions): () => Promise<void> {
  let running: Promise<unknown> = Promise.resolve()
  const look = (): void => {
    running = backUpWhenDue(options).catch((error: unknown) => options.complain(inWords(error)))
  }
  const first = setTimeout(look, options.soon ?? 60_000).unref()
  const later = setInterval(look, hour).unref()
  return async () => {
    clearTimeout(first)
    clearInterval(later)
    await running
  }
}

/** Makes the backup of the day when it is due, and thins out the old ones. */
export async function backUpWhenDue(options: ScheduleOptions): Promise<Backup | undefined> {
  const { logbook, folder, to, keep, complain, clock = () => new Date() } = options
  const now = clock()
  const last = (await backupsIn(to)).at(-1)
  const entries = await logbook.received()
  const attachments = (await logbook.attachments()).length
  if (!isDue(last, { entries, attachments }, now)) return undefined
  const made = await backUp({ folder, to, now, made: 'daily' })
  for (const sha256 of made.manifest.leftOut)
    complain(`Backup: attachment ${sha256} is damaged or gone and is not in it. Earlier backups may hold it.`)
  await thinOut(to, { keep, now })
  return made
}

function isDue(
  last: Backup | undefined,
  { entries, attachments }: { readonly entries: number; readonly attachments: number },
  now: Date,
): boolean {
  if (last === undefined) return entries > 0
  const { manifest } = last
  const held = manifest.files.length - 1 + manifest.leftOut.length
  const changed = manifest.entries !== entries || held !== attachments
  // One that seems to come from the future was made before the clock was set back.
  return changed && Math.abs(now.getTime() - Date.parse(manifest.madeAt)) >= day
}

function inWords(error: unknown): string {
  return error instanceof Refused
    ? error.issues.map(issueInWords).join('\n')
    : `Backup: it failed (${error instanceof Error ? error.message : error}). It is tried again in an hour.`
}
