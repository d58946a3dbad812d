/**
 * `npm run experiment -- FILE.json ...`: runs the model under the conditions of an experiment and prints what was
 * measured beside what the model's band says; ours without a file. Exit code 1 where a file cannot be read or a
 * measurement is missed whose miss the file does not name.
 */
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { published } from './experiment/published.ts'
import { readExperiment } from './experiment/read-experiment.ts'
import { agrees, runExperiment } from './experiment/run-experiment.ts'
import { asText } from './experiment/table.ts'

const named = process.argv.slice(2)
for (const file of named.length > 0 ? named.map((name) => resolve(name)) : published()) {
  try {
    const read = readExperiment(readFileSync(file, 'utf8'))
    if (read.ok) {
      const rows = runExperiment(read.experiment)
      console.log(`${asText(read.experiment.document, rows)}\n`)
      if (rows.some((row) => !agrees(row) && row.measured.miss === undefined)) process.exitCode = 1
    } else {
      console.error(`${file} cannot be run:\n${read.issues.map((issue) => `- ${issue}`).join('\n')}`)
      process.exitCode = 1
    }
  } catch (error) {
    console.error(`File: ${file} cannot be read (${error instanceof Error ? error.message : error}).`)
    process.exitCode = 1
  }
}
