/** `node scripts/run.mjs make-experiments-page`: runs every published experiment and writes its page of the docs. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { presentExperimentsPage } from './experiment/page.ts'
import { root } from './experiment/published.ts'
import { modelHash } from './model-hash.ts'
import { compared } from './published-experiments.ts'

const file = join(root, 'docs', 'how-it-works', 'experiments.md')
writeFileSync(file, presentExperimentsPage([...compared()], modelHash()))
console.log(`Wrote ${file}`)
