/** `npm run validate`: our numbers beside programs of others; prints each comparison and one line of counts. */
import type { Check } from './check.ts'
import { againstCvode } from './cvode.ts'
import { fuzzQuantities } from './fuzz-quantities.ts'
import { againstGsw } from './gsw.ts'
import { equippedSystems, ordinarySystems } from './ordinary.ts'

/** One line a comparison with the world outside. */
const comparisons: readonly (() => readonly Check[])[] = [
  againstCvode,
  fuzzQuantities,
  againstGsw,
  equippedSystems,
  ordinarySystems,
]

const checks = comparisons.flatMap((compare) => compare())
for (const { name, outcome, says } of checks) console.log(`${outcome.padEnd(7)} ${name}: ${says}`)
const count = (outcome: Check['outcome']): number =>
  checks.filter((check) => check.outcome === outcome).length
console.log(`${count('passed')} passed, ${count('failed')} failed, ${count('skipped')} skipped`)
if (count('failed') > 0) process.exitCode = 1
