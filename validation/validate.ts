/**
 * `npm run validate`: our numbers beside programs of others, and the record under what may befall it;
 * prints each check and one line of counts. With `-- --full` the record is killed 200 times and not 20, and 100,000 sheets
 * are scribbled in and not 3000.
 */
import type { Check } from './check.ts'
import { checkCopies } from './copies/index.ts'
import { againstCbc } from './crew/against-cbc.ts'
import { againstCvode } from './cvode.ts'
import { cycles } from './cycle.ts'
import { fedOtherwise } from './fed-otherwise.ts'
import { fuzzQuantities } from './fuzz-quantities.ts'
import { fuzzSheets } from './fuzz-sheets.ts'
import { grazedReefs } from './grazed-reefs.ts'
import { againstGsw } from './gsw.ts'
import { keyCalibration } from './key/calibration.ts'
import { equippedSystems, ordinarySystems } from './ordinary.ts'
import { publishedExperiments } from './published-experiments.ts'
import { checkRecord } from './record/index.ts'
import { againstDesolve, againstScipy } from './scripted.ts'
import { onStiffProblems } from './stiff/index.ts'
import { otherMethods } from './stiff/methods.ts'
import { typedFromPapers } from './typed/index.ts'

const full = process.argv.includes('--full')

/** One line a comparison with the world outside. */
const comparisons: readonly (() => Iterable<Check> | AsyncIterable<Check> | Promise<Iterable<Check>>)[] = [
  againstCvode,
  againstScipy,
  typedFromPapers,
  onStiffProblems,
  ...(full ? [againstDesolve, otherMethods] : []),
  cycles,
  fuzzQuantities,
  () => fuzzSheets({ full }),
  againstGsw,
  equippedSystems,
  ordinarySystems,
  fedOtherwise,
  grazedReefs,
  publishedExperiments,
  keyCalibration,
  againstCbc,
  () => checkRecord({ full }),
  () => checkCopies({ full }),
]

const checks: Check[] = []
for (const compare of comparisons) {
  for await (const check of await compare()) {
    console.log(`${check.outcome.padEnd(7)} ${check.name}: ${check.says}`)
    checks.push(check)
  }
}
const count = (outcome: Check['outcome']): number =>
  checks.filter((check) => check.outcome === outcome).length
if (count('gap') > 0) console.log(`${count('gap')} known gaps, named above`)
console.log(`${count('passed')} passed, ${count('failed')} failed, ${count('skipped')} skipped`)
if (count('failed') > 0) process.exitCode = 1
