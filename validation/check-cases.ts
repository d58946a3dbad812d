/**
 * `npm run check-cases -- FOLDER`: asks every statement of every case in a folder, ours without one. The last
 * line counts what passed, failed and was skipped; exit code 1 if anything failed or nothing passed.
 */
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { holdfastModel } from './model/index.ts'
import { checkCases } from './run-cases.ts'

// Seen from dist, where this program is built to, and from its source alike.
const ownCases = join(dirname(fileURLToPath(import.meta.url)), '..', 'validation', 'cases')

const [folder] = process.argv.slice(2)
const { lines, exitCode } = checkCases(folder === undefined ? ownCases : resolve(folder), holdfastModel)
for (const line of lines) console.log(line)
process.exitCode = exitCode
