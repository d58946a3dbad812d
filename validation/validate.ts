/**
 * `npm run validate`: our numbers beside programs of others and beside published experiments, and the record under
 * what may befall it; prints each check, what it did not run, and one line of counts. `-- --full` runs everything,
 * goes on where an earlier full run of the same commit was stopped, and writes a dated report.
 */
import { execFileSync } from 'node:child_process'
import type { Check } from './check.ts'
import { checkCopies } from './copies/index.ts'
import { againstCbc } from './crew/against-cbc.ts'
import { eatenInADay } from './crew/eaten.ts'
import { againstCvode } from './cvode.ts'
import { cycles } from './cycle.ts'
import { root } from './experiment/published.ts'
import { seed } from './experiment/run-experiment.ts'
import { fedOtherwise } from './fed-otherwise.ts'
import { fuzzQuantities } from './fuzz-quantities.ts'
import { fuzzSheets } from './fuzz-sheets.ts'
import { grazedReefs } from './grazed-reefs.ts'
import { againstGsw } from './gsw.ts'
import { keyCalibration } from './key/calibration.ts'
import { modelHash } from './model-hash.ts'
import { equippedSystems, ordinarySystems } from './ordinary.ts'
import { publishedExperiments } from './published-experiments.ts'
import { quotedFigures } from './quoted-figures.ts'
import { checkRecord } from './record/index.ts'
import { doneBefore, keepDone, reportsAsWritten, writeReport } from './report.ts'
import { againstDesolve, againstScipy } from './scripted.ts'
import { onStiffProblems } from './stiff/index.ts'
import { otherMethods } from './stiff/methods.ts'
import { typedFromPapers } from './typed/index.ts'

const full = process.argv.includes('--full')

type Comparison = () => Iterable<Check> | AsyncIterable<Check> | Promise<Iterable<Check>>

/** One line a comparison with the world outside. */
const comparisons: Readonly<Record<string, Comparison>> = {
  'quoted figures': quotedFigures,
  'earlier reports': reportsAsWritten,
  'equations solved by CVODE': againstCvode,
  'equations solved by SciPy': againstScipy,
  'processes typed from papers': typedFromPapers,
  'stiff problems': onStiffProblems,
  cycles,
  'published experiments': publishedExperiments,
  'texts of quantities': fuzzQuantities,
  'scribbled sheets': () => fuzzSheets({ full }),
  'sea water': againstGsw,
  'two hundred draws of equipment': equippedSystems,
  'twenty ordinary systems': ordinarySystems,
  'systems fed otherwise': fedOtherwise,
  'grazed reefs': grazedReefs,
  'the field key': keyCalibration,
  'crew plans beside another solver': againstCbc,
  'what grazers eat': eatenInADay,
  'the record under harm': () => checkRecord({ full }),
  'copies under harm': () => checkCopies({ full }),
}

/** What takes too long for every day. */
const onlyInFull: Readonly<Record<string, Comparison>> = {
  'equations solved by deSolve': againstDesolve,
  'stiff problems by other methods': otherMethods,
}

const git = (...args: readonly string[]): string =>
  execFileSync('git', args, { cwd: root, encoding: 'utf8' }).trim()

const basis = {
  commit: full ? git('rev-parse', 'HEAD') : '',
  clean: full && git('status', '--porcelain') === '',
  model: modelHash(),
  seed,
}
const done = full ? doneBefore(basis) : {}
for (const [name, compare] of Object.entries(full ? { ...comparisons, ...onlyInFull } : comparisons)) {
  if (name in done) {
    console.log(`${name}: done before`)
    continue
  }
  const checks: Check[] = []
  for await (const check of await compare()) {
    console.log(`${check.outcome.padEnd(7)} ${check.name}: ${check.says}`)
    checks.push(check)
  }
  done[name] = checks
  if (full) keepDone(basis, done)
}

const checks = Object.values(done).flat()
const count = (outcome: Check['outcome']): number =>
  checks.filter((check) => check.outcome === outcome).length
if (full) console.log(`Wrote ${writeReport(basis, done, new Date())}`)
else
  console.log(
    `Not run: ${Object.keys(onlyInFull).join(', ')}; 180 of 200 kills of the record; 97,000 of 100,000 sheets. \`npm run validate -- --full\` runs them.`,
  )
if (count('gap') > 0) console.log(`${count('gap')} known gaps, named above`)
console.log(`${count('passed')} passed, ${count('failed')} failed, ${count('skipped')} skipped`)
if (count('failed') > 0) process.exitCode = 1
