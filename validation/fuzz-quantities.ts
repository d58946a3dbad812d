import { answerFaults } from '@holdfast/quantities/testing/answer-faults'
import { placeOfText, typedText } from '@holdfast/quantities/testing/typed-text'
import fc from 'fast-check'
import type { Check } from './check.ts'

const TEXTS = 100_000
/** A run is repeated by its seed; another one is given with HOLDFAST_FUZZ_SEED. */
const USUAL_SEED = 20_260_101

/** 100,000 texts, right, nearly right and wild, through every parser of what people type. */
export function fuzzQuantities(): readonly Check[] {
  const seed = Number(process.env.HOLDFAST_FUZZ_SEED ?? USUAL_SEED)
  const began = performance.now()
  const run = fc.check(
    fc.property(fc.tuple(typedText, placeOfText), ([text, place]) => answerFaults(text, place).length === 0),
    { numRuns: TEXTS, seed },
  )
  const seconds = ((performance.now() - began) / 1000).toFixed(0)
  const [worst] = run.counterexample ?? []
  const found =
    worst === undefined
      ? `no crash, no NaN, no Infinity in ${run.numRuns} texts`
      : `${JSON.stringify(worst)}: ${answerFaults(...worst).join('; ')}`
  return [
    {
      name: 'what people type, through every parser',
      outcome: run.failed ? 'failed' : 'passed',
      says: `${found}; seed ${seed}, ${seconds} s`,
    },
  ]
}
