/**
 * Runs one of the TypeScript files of this folder with plain Node: `node validation/run.mjs FILE ARGUMENTS`.
 * The file exports `main(args)`, whose number is the exit code.
 */
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

const root = fileURLToPath(new URL('..', import.meta.url))
const [file, ...args] = process.argv.slice(2)
const { module } = await runnerImport(resolve(root, 'validation', file), {
  root,
  configFile: false,
  logLevel: 'error',
})
process.exitCode = await module.main(args)
