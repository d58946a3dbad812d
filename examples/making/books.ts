import { type Atom, assemble, border, type Export, type Ledger, ledger } from '@holdfast/ecosystem'
import { type BandedLedger, ledgerOf, weightedQuantiles } from '@holdfast/inference'
import { endOfDay, modelDay, observationsAndEvents } from '@holdfast/logbook'
import { molarMass } from '@holdfast/quantities'
import { entriesIn, received } from './entries.ts'
import { type ExampleFiles, lived } from './files.ts'
import type { Story } from './story.ts'
import { runOf } from './truth.ts'

/** The ledger of the last ninety days twice: as it truly was, and as the log lets one say. */
export interface Books {
  readonly truth: Ledger
  readonly fitted: BandedLedger
}

/** One way out, mg of the atom a day; the ends are those of a 90 % interval. */
export interface WayOut {
  readonly name: Export
  readonly truth: number
  readonly fitted: number
  readonly low: number
  readonly high: number
}

const days = 90
const seed = 1

/** Both ledgers of a story; the fitted one knows of it what its files tell, and no more. */
export function booksOf(story: Story, files: ExampleFiles, members: number): Books {
  const { system, done } = lived(story)
  const { timeZone } = system
  const from = modelDay(story.firstDate, 0, timeZone)
  const to = endOfDay(story.lastDate, timeZone)
  const span = { from: to - days, to }
  const happened = observationsAndEvents(received(done), timeZone).events
  const run = runOf(system, happened, { from, to, samples: [], marks: [span.from, to] }, story.tank)
  const { observations, events } = observationsAndEvents(received(entriesIn(files['log.json'])), timeZone)
  const question = { system, observations, events, from, asOf: to, horizonDays: 0, members, seed }
  return {
    truth: ledger(assemble(system), run.marks[0], run.marks[1]),
    fitted: ledgerOf(question, span).ledger,
  }
}

/** Every way out that carried something, the one that truly carried the most first. */
export function waysOut({ truth, fitted }: Books, atom: Atom): readonly WayOut[] {
  const perDay = (amount_umol = 0): number => (amount_umol * molarMass(atom)) / 1000 / days
  const was = border(truth, atom).exports
  const mean = border(fitted, atom).exports
  const each = fitted.weights.map((_, member) => border(bookOf(fitted, member), atom).exports)
  return [...new Set([...was.keys(), ...mean.keys()])]
    .map((name) => {
      const values = each.map((exports) => exports.get(name) ?? 0)
      const [low, high] = weightedQuantiles(values, fitted.weights, [0.05, 0.95]).map(perDay)
      return { name, truth: perDay(was.get(name)), fitted: perDay(mean.get(name)), low, high }
    })
    .sort((one, other) => other.truth - one.truth)
}

/** The flows of one member. */
const bookOf = (fitted: BandedLedger, member: number): Ledger => ({
  ...fitted,
  rows: fitted.rows.map((row) => ({ ...row, amount_umol: row.members[member] ?? 0 })),
})
