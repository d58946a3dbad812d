/** What the ladder offers for a case on the day on which one looks. */
import { presentOfPast } from '@holdfast/crew-plan'
import { ladder } from '@holdfast/ladder'
import { salinityAt } from '../answers/evaporation.ts'
import { notedIn } from '../answers/identification.ts'
import type { CaseFile } from '../case-file.ts'
import type { OfferedLadder } from '../model-answers.ts'
import { keyOf, presentOf } from './past-of-case.ts'

const ladders = new Map<string, OfferedLadder>()

export function offeredLadder(file: CaseFile): OfferedLadder {
  const key = keyOf(file)
  const known = ladders.get(key)
  if (known) return known
  const made = ladderFor(file)
  ladders.set(key, made)
  return made
}

function ladderFor(file: CaseFile): OfferedLadder {
  const { known, question } = presentOf(file)
  const { system, observations, events, from } = question
  const present = presentOfPast(known, question)
  const noted = notedIn(file)
  const asked = { present, system, observations, events, from, salinity_psu: salinityAt(file, file.asof) }
  const { rungs, cautions } = ladder({ ...asked, ...(noted === undefined ? {} : { noted }) })
  const last = rungs.length > 1 ? rungs.at(-1) : undefined
  return {
    measures: rungs.map(({ measure }) => measure),
    cautions: cautions.map(({ key: name }) => name),
    ...(last === undefined || last.cautions.length === 0 ? {} : { lastWithWarning: last.measure }),
  }
}
