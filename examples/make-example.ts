/**
 * `node scripts/run.mjs make-example [FOLDER]`: writes the invented reef of 600 L and its invented year,
 * without a folder into examples/reef-600 of the folder where the command is given.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { reef600 } from './year/reef-600.ts'

const folder = process.argv[2] ?? join('examples', 'reef-600')
mkdirSync(folder, { recursive: true })
for (const [name, text] of Object.entries(reef600())) {
  writeFileSync(join(folder, name), text)
  console.log(`${join(folder, name)}: ${text.length} characters`)
}
