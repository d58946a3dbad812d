/**
 * `npm run make-examples [-- FOLDER]`: writes the files of every example, each into the folder of its
 * name, without a folder into examples of the folder where the command is given.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesOf } from './making/files.ts'
import { stories } from './stories.ts'

const into = process.argv[2] ?? 'examples'
for (const [name, story] of Object.entries(stories)) {
  const folder = join(into, name)
  mkdirSync(folder, { recursive: true })
  for (const [file, text] of Object.entries(filesOf(story))) {
    writeFileSync(join(folder, file), text)
    console.log(`${join(folder, file)}: ${text.length} characters`)
  }
}
