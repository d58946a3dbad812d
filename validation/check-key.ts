/**
 * `npm run check-key -- FILE.csv`: weighs every vignette of a file by the field key, ours without one. The last
 * line counts those whose true kind stands first; exit code 1 under nine in ten, or if one is not in the first three.
 */
import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { checkKey } from './key-check.ts'

// Seen from dist, where this program is built to, and from its source alike.
const ownVignettes = join(dirname(fileURLToPath(import.meta.url)), '..', 'validation', 'key', 'vignettes.csv')

const [named] = process.argv.slice(2)
const file = named === undefined ? ownVignettes : resolve(named)
try {
  const { lines, exitCode } = checkKey(readFileSync(file, 'utf8'))
  for (const line of lines) console.log(line)
  process.exitCode = exitCode
} catch (error) {
  console.error(
    `File: ${file} cannot be read (${error instanceof Error ? error.message : error}). Name a CSV file.`,
  )
  process.exitCode = 1
}
