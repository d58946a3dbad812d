import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { start } from './start.ts'

const usage = `Usage: npm start -- [--data FOLDER] [--restore]

Serves Holdfast on this machine and opens it in the browser.

  --data FOLDER             where the log lives (else HOLDFAST_DATA, else the usual place of the platform)
  --restore                 first puts the last whole backup in the place of the log, which is kept beside it
  PORT=4173                 first port to try
  HOLDFAST_NO_BROWSER=1     prints the address and opens nothing
  HOLDFAST_BACKUPS=FOLDER   where backups go (else "backups" beside the log); best on another disk
  HOLDFAST_BACKUPS_KEEP=14  how many daily backups stay; 0 makes none
`

/** This file is built into dist/; the web app is beside it, the examples beside dist. */
const here = dirname(fileURLToPath(import.meta.url))

/** What a first start has to show. */
const examples = ['reef-600', 'reef-90', 'refugium-1500']

async function main(): Promise<void> {
  const { data, restore, help } = parseArgs({
    options: {
      data: { type: 'string' },
      restore: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  }).values
  if (help) {
    process.stdout.write(usage)
    return
  }
  const started = await start({
    folder: data,
    restore,
    platform: process.platform,
    home: homedir(),
    env: process.env,
    webFolder: join(here, 'web'),
    exampleFolders: examples.map((name) => join(here, '..', 'examples', name)),
    print: (line) => process.stdout.write(`${line}\n`),
    complain: (line) => process.stderr.write(`${line}\n`),
  })
  process.exitCode = started.exitCode
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void started.stop?.())
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n${usage}`)
  process.exitCode = 1
})
