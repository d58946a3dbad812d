/**
 * `npm run check-values -- FILE.csv`: asks every check value of a file, ours without one. The last line counts
 * what passed and failed; exit code 1 if anything failed or nothing passed.
 */
import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { checkValues } from './values-check.ts'

// Seen from dist, where this program is built to, and from its source alike.
const ownValues = join(
  dirname(fileURLToPath(import.meta.url)),
  '..',
  'validation',
  'seawater',
  'seawater-checks.csv',
)

const [named] = process.argv.slice(2)
const file = named === undefined ? ownValues : resolve(named)
try {
  const { lines, exitCode } = checkValues(readFileSync(file, 'utf8'))
  for (const line of lines) console.log(line)
  process.exitCode = exitCode
} catch (error) {
  console.error(
    `File: ${file} cannot be read (${error instanceof Error ? error.message : error}). Name a CSV file.`,
  )
  process.exitCode = 1
}
