/**
 * `npm run check-imports -- FOLDER`: reads every sheet in a folder that has its truth beside it, ours
 * without one. A line a difference; the last line counts the sheets; exit code 1 if any differs or none is there.
 */
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { importReport } from './imports-check.ts'

// Seen from dist, where this program is built to, and from its source alike.
const ownSheets = join(dirname(fileURLToPath(import.meta.url)), '..', 'validation', 'spreadsheets')

const [folder] = process.argv.slice(2)
const { lines, exitCode } = importReport(folder === undefined ? ownSheets : resolve(folder))
for (const line of lines) console.log(line)
process.exitCode = exitCode
