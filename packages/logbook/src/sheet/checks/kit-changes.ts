import { placeName } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import type { Noted } from '../notes/take-notes.ts'
import type { Questions } from '../questions.ts'
import { changed, median, runsOf } from './neighbours.ts'

/** A step at a new kit is asked about from this ratio on. */
const step = 1.5
const reach = 4
const options = ['new kit', 'old kit', 'scale between']

/**
 * From a note about a new kit on, readings carry another kit, so that a step is the kit's before it is the
 * water's. Where the readings step at it, the keeper is asked which kit is to be believed; those of the other
 * are then held for estimates.
 */
export function kitChanges(
  values: readonly TakenValue[],
  noted: readonly Noted[],
  questions: Questions,
): readonly TakenValue[] {
  const changes = new Map<string, Partial<TakenValue>>()
  for (const { moment, table, row, events } of noted) {
    for (const event of events) {
      if (event.kind !== 'kit-change') continue
      for (const { values: run, figures } of runsOf(values)) {
        const { quantity } = run[0]?.series ?? {}
        const isMeant = event.quantity === undefined || event.quantity === quantity
        const from = run.findIndex((value) => value.table === table && value.row >= row)
        if (quantity === undefined || !isMeant || from < 1) continue
        const before = figures.filter(({ at }) => at < from).slice(-reach)
        const after = figures.filter(({ at }) => at >= from).slice(0, reach)
        const ratio = median(after.map(({ value }) => value)) / median(before.map(({ value }) => value))
        const isStep = ratio >= step || ratio <= 1 / step
        if (event.quantity === undefined && !isStep) continue
        const answer = isStep ? ask(run, from, row, ratio, questions) : undefined
        for (const [at, value] of run.entries()) {
          const isNew = at >= from
          const kitFrom = `${isNew ? 'kit from' : 'kit before'} ${run[from]?.when.date ?? moment.written}`
          const isEstimate = answer === (isNew ? 'old kit' : 'new kit')
          const unsure = isEstimate ? { value: { ...value.value, approximate: true as const } } : {}
          changes.set(placeName(value), { kitFrom, ...unsure })
        }
      }
    }
  }
  return changed(values, changes)
}

function ask(
  run: readonly TakenValue[],
  from: number,
  row: number,
  ratio: number,
  questions: Questions,
): string | undefined {
  const [first] = run
  if (first === undefined) return undefined
  const { series } = first
  const where = `${series.where}, from row ${row + 1}`
  const by = ratio < 1 ? `to ${Math.round(ratio * 100)} %` : `${ratio.toFixed(1)} times`
  const question = `${series.quantity} goes ${by} at the change of kit: which kit is to be believed?`
  const key = `${series.key} row ${row + 1}`
  return questions.offer({ key, where }, 'kit-change', question, options, run.slice(from).map(placeName))
}
