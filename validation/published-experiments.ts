import { readFileSync } from 'node:fs'
import { type Check, judged } from './check.ts'
import type { ExperimentDocument } from './experiment/experiment-file.ts'
import { published } from './experiment/published.ts'
import { readExperiment } from './experiment/read-experiment.ts'
import { agrees, type Row, runExperiment } from './experiment/run-experiment.ts'
import { modelled } from './experiment/table.ts'

/** Part of the figures read in their sources that the 90 % band has to reach. */
const asked = 0.7

export interface Compared {
  readonly document: ExperimentDocument
  readonly rows: readonly Row[]
}

/** Every published experiment, run. @throws Error where a file of ours cannot be run */
export function* compared(): Generator<Compared> {
  for (const file of published()) {
    const read = readExperiment(readFileSync(file, 'utf8'))
    if (!read.ok) throw new Error(`${file} cannot be run: ${read.issues.join(' ')}`)
    yield { document: read.experiment.document, rows: runExperiment(read.experiment) }
  }
}

/** The model under the conditions of published experiments; no fact is set for one of them. */
export function* publishedExperiments(): Generator<Check> {
  const all: Row[] = []
  for (const { document, rows } of compared()) {
    all.push(...rows)
    yield* rows.map((row) =>
      judged(
        `${document.title}: ${row.measured.says}`,
        agrees(row),
        `model ${modelled(row)}${row.measured.miss === undefined ? '' : `; ${row.measured.miss}`}`,
        row.measured.miss !== undefined,
      ),
    )
  }
  const { within, of, independentWithin, independent } = shareWithin(all)
  yield {
    name: 'figures read in their sources within the 90 % band',
    outcome: within >= asked * of ? 'passed' : 'failed',
    says: `${within} of ${of}, asked ${asked * 100} %; ${independentWithin} of the ${independent} on which no prior rests and whose set-up stands as first written`,
  }
}

/** How many of the figures read in their sources the 90 % band reaches; signs are not counted. */
export function shareWithin(rows: readonly Row[]) {
  const figures = rows.filter(
    ({ measured }) => measured.value !== undefined && measured.provenance === 'read',
  )
  const free = figures.filter(({ measured }) => measured.rests === undefined && measured.mended === undefined)
  const holding = (list: readonly Row[]): number => list.filter(({ holds }) => holds).length
  return {
    within: holding(figures),
    of: figures.length,
    independentWithin: holding(free),
    independent: free.length,
  }
}
