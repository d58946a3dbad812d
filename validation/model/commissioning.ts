/** The start-up of a case: its peaks, what stands before its first animals, and the day on which they may come. */
import { type Commissioning, commissioning, startUpQuestion } from '@holdfast/commissioning'
import { past } from '@holdfast/inference'
import type { CaseFile } from '../case-file.ts'
import { keyOf, questionOf } from './past-of-case.ts'

const known = new Map<string, Commissioning>()

export function commissioningOf(file: CaseFile): Commissioning {
  const key = keyOf(file)
  const found = known.get(key)
  if (found !== undefined) return found
  const question = questionOf(file)
  const made = commissioning(past(startUpQuestion(question)), question)
  known.set(key, made)
  return made
}
