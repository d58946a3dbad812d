/**
 * `npm run make-examples`: writes the files of every example into examples/<its name>, and the table of
 * truth and fitted ledger into examples/README.md.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Books, booksOf } from './making/books.ts'
import { filesOf } from './making/files.ts'
import { tableOf, withTable } from './making/table.ts'
import { stories } from './stories.ts'

/** As many as the ledger of a terminal has. */
const members = 200

const books = new Map<string, Books>()
for (const [name, story] of Object.entries(stories)) {
  const files = filesOf(story)
  for (const [file, text] of Object.entries(files)) {
    writeFileSync(join('examples', name, file), text)
    console.log(`${join('examples', name, file)}: ${text.length} characters`)
  }
  books.set(name, booksOf(story, files, members))
}
const page = join('examples', 'README.md')
writeFileSync(page, withTable(readFileSync(page, 'utf8'), tableOf(books)))
console.log(`${page}: the table`)
