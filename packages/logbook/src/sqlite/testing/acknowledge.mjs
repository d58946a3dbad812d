// Writes one entry into the log of the folder given, says so, and waits to be killed.
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

const load = async (/** @type {string} */ path) =>
  (await runnerImport(fileURLToPath(new URL(path, import.meta.url)))).module

const { openLogbook } = await load('../open.ts')
const { nitrate } = await load('../../conformance/nitrate.ts')
const opened = openLogbook({ folder: process.argv[2] })
if (!opened.ok) throw new Error(JSON.stringify(opened.issues))
await opened.logbook.append([nitrate(7)])
process.stdout.write('acknowledged\n')
setInterval(() => {}, 1000)
