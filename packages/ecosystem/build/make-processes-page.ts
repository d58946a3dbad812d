import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { presentProcessesPage } from './present-processes-page.ts'

const file = join('docs', 'how-it-works', 'processes.md')
writeFileSync(file, presentProcessesPage())
console.log(`Wrote ${file}.`)
