import { randomUUID } from 'node:crypto'
import { issueInWords, Refused } from '@holdfast/logbook'
import { wayBack } from '@holdfast/logbook/copies'
import { openStore } from '@holdfast/logbook/open'
import { dataFolder, markRunning, runningOn, type Surroundings, unmark } from '@holdfast/logbook/sqlite'
import { app } from './app.ts'
import { scheduleBackups } from './backup-schedule.ts'
import { backupSettings } from './backup-settings.ts'
import { bringBack } from './bring-back.ts'
import { putExamplesIn } from './example.ts'
import { listen } from './listen.ts'
import { openBrowser } from './open-browser.ts'

const usualPort = 4173

/** The machine on which the server starts. */
export interface StartOptions extends Surroundings {
  /** Chosen on the command line; else by HOLDFAST_DATA or the platform. */
  readonly folder?: string | undefined
  /** Puts the last whole backup in the place of the log before all else. */
  readonly restore?: boolean | undefined
  readonly webFolder: string
  readonly exampleFolders: readonly string[]
  readonly print: (line: string) => void
  readonly complain: (line: string) => void
}

/** A server that runs, or undefined where another one was found or nothing could start. */
export interface Started {
  readonly exitCode: number
  readonly stop?: () => Promise<void>
}

/**
 * Starts the server on a data folder, or finds the one that runs there; prints its address and where
 * the log lives, and opens the browser.
 */
export async function start(options: StartOptions): Promise<Started> {
  const { platform, env, print, complain } = options
  const folder = options.folder ?? dataFolder(options)
  const from = portOf(env.PORT)
  if (from === undefined) {
    complain(`PORT: "${env.PORT}" is no port. Give a whole number from 0 to 65535, such as ${usualPort}.`)
    return { exitCode: 1 }
  }
  const backups = backupSettings(folder, env)
  if (typeof backups === 'string') {
    complain(backups)
    return { exitCode: 1 }
  }
  // A folder that was chosen for this start goes before a server that stands in the surroundings.
  const databaseUrl = options.folder === undefined ? env.DATABASE_URL : undefined
  try {
    if (options.restore) print(await bringBack(folder, backups.to, databaseUrl))
  } catch (error) {
    complain(error instanceof Error ? error.message : String(error))
    return { exitCode: 1 }
  }
  const show = (port: number, kept: string): void => {
    print(`http://localhost:${port}`)
    print(`Your log is kept ${kept}.`)
    openBrowser(`http://localhost:${port}`, platform, env)
  }
  // On a database server any number of programs share a log; in a folder there is one.
  const isInFolder = !databaseUrl
  const running = isInFolder ? await runningOn(folder) : undefined
  if (running !== undefined) {
    show(running, `in ${folder}, where Holdfast runs already`)
    return { exitCode: 0 }
  }
  const opened = await openStore({ folder, databaseUrl })
  if (!opened.ok) {
    const chosen = options.folder === undefined ? '' : `--data "${folder}" `
    const issues = await wayBack(opened.issues, backups.to, `npm start -- ${chosen}--restore`)
    for (const issue of issues) complain(issueInWords(issue))
    return { exitCode: 1 }
  }
  const { logbook, kept } = opened
  const mark = { start: randomUUID(), pid: process.pid }
  try {
    await putExamplesIn(logbook, options.exampleFolders, new Date())
    const { webFolder } = options
    const tell = (failure: unknown): void =>
      complain(failure instanceof Error ? (failure.stack ?? failure.message) : String(failure))
    const { server, port } = await listen(app({ logbook, kept, webFolder, start: mark.start, tell }), from)
    const isBackedUp = isInFolder && backups.keep > 0
    const endBackups = isBackedUp
      ? scheduleBackups({ logbook, folder, ...backups, complain })
      : async () => {}
    const stop = async (): Promise<void> => {
      unmark(folder, mark.start)
      await endBackups()
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
      await logbook.close()
    }
    const marking = isInFolder ? markRunning(folder, { ...mark, port }) : Promise.resolve(undefined)
    const quicker = await marking.catch(async (error: unknown) => {
      // A server that listens would keep the program from ending.
      await stop()
      throw error
    })
    if (quicker !== undefined) {
      await stop()
      show(quicker, `in ${folder}, where Holdfast runs already`)
      return { exitCode: 0 }
    }
    show(port, kept)
    return { exitCode: 0, stop }
  } catch (error) {
    await logbook.close()
    if (error instanceof Refused) for (const issue of error.issues) complain(issueInWords(issue))
    else complain(`Holdfast could not start: ${error instanceof Error ? error.message : error}.`)
    return { exitCode: 1 }
  }
}

function portOf(said: string | undefined): number | undefined {
  if (said === undefined || said === '') return usualPort
  return /^\d{1,5}$/.test(said) && Number(said) <= 65_535 ? Number(said) : undefined
}
