import { ledgerOf, type OutlookQuestion, outlookFrom, type Past, past } from '@holdfast/inference'
import type { Model, Running } from './answers.ts'

/** Pasts worked out so far, the coarse and the whole one: a lever moves the future alone. */
const known = new Map<number, { readonly asked: string; readonly past: Past }>()

/** The model that ships. */
export const model: Model = {
  outlook(question, running) {
    const scaled = (from: number, share: number): Running => ({
      ...running,
      onProgress: (done) => running.onProgress(from + share * done),
    })
    const found = pastOf(question)
    if (found) return outlookFrom(found, question, running)
    const worked = past(question, scaled(0, 0.8))
    known.set(question.members, { asked: pastInputs(question), past: worked })
    return outlookFrom(worked, question, scaled(0.8, 0.2))
  },
  ledger: ledgerOf,
}

function pastOf(question: OutlookQuestion): Past | undefined {
  const found = known.get(question.members)
  return found?.asked === pastInputs(question) ? found.past : undefined
}

function pastInputs({ levers: _levers, horizonDays: _horizon, ...rests }: OutlookQuestion): string {
  return JSON.stringify(rests)
}
