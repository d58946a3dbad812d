/** The ensemble of a case up to the day on which one looks, weighed by its readings; each worked out once. */
import { withEverPresent } from '@holdfast/crew-plan'
import { assemble, type Model, settingsOn, timeline } from '@holdfast/ecosystem'
import { type OutlookQuestion, type Past, past, surveyed } from '@holdfast/inference'
import { noon } from '../calendar.ts'
import type { CaseFile } from '../case-file.ts'
import { algaeKey, caseEvents, caseObservations, caseSystem } from '../case-system.ts'

/** Enough that medians move by less than the ranges allow; every run draws the same ones. */
const members = 400
const seed = 1

export function questionOf(file: CaseFile): OutlookQuestion {
  return {
    system: caseSystem(file),
    observations: caseObservations(file),
    events: caseEvents(file),
    from: noon(file.start),
    asOf: noon(file.asof),
    horizonDays: 30,
    members,
    seed,
  }
}

const pasts = new Map<string, Past>()

export function pastOf(file: CaseFile): Past {
  const key = keyOf(file)
  const known = pasts.get(key)
  if (known !== undefined) return known
  const made = past(questionOf(file))
  pasts.set(key, made)
  return made
}

/** What an answer may depend on: system and log, not what is said of them. */
export function keyOf({ id, start, asof, system, log }: CaseFile): string {
  return JSON.stringify([id, start, asof, system, log])
}

/**
 * The ensemble that the readings of a case weighed, kept from today on as a variant of the case says. The
 * past stays what it was: a variant was never lived.
 */
export const presentOf = (file: CaseFile): PresentOfCase => presentFrom(file, questionOf, pastOf)

/** The same for a crew plan, which reckons with what grows in every tank. */
export const presentForCrew = (file: CaseFile): PresentOfCase =>
  presentFrom(
    file,
    (one) => withEverPresent(questionOf(one)),
    (one) => {
      const question = questionOf(one)
      const wider = withEverPresent(question)
      return wider === question ? pastOf(one) : past(wider)
    },
  )

interface PresentOfCase {
  readonly known: Past
  readonly question: OutlookQuestion
}

function presentFrom(
  file: CaseFile,
  questionFor: (file: CaseFile) => OutlookQuestion,
  pastFor: (file: CaseFile) => Past,
): PresentOfCase {
  const question = questionFor(file)
  const known = pastFor(file.variantOf ?? file)
  if (file.variantOf === undefined) return { known, question }
  const model = assemble(surveyed(question, question.from))
  if (!sameStates(model, known.model)) return { known: past({ ...question, observations: [] }), question }
  const { from, asOf } = question
  const settings = settingsOn(model, timeline({ ...question, system: model.system, to: asOf, from }), asOf)
  return { known: { ...known, model, members: known.members.map((one) => ({ ...one, settings })) }, question }
}

function sameStates(one: Model, other: Model): boolean {
  const names = ({ states, parameters }: Model) =>
    JSON.stringify([
      states.map((entry) => (entry.kind === 'atoms' ? entry.account.id : entry.state.id)),
      parameters,
    ])
  return names(one) === names(other)
}

/** The case with a trace of an algae kind, where the question is about one that no survey found. */
export function withAlgae(file: CaseFile, surface: string, algae: string): CaseFile {
  const found = caseSystem(file).algae.some((one) => one.kind === algae && one.surface === surface)
  if (found) return file
  const survey = { date: file.start, kind: 'survey', surface, algae: algaeKey(algae), cover: 0.001 }
  return { ...file, log: { ...file.log, events: [survey, ...file.log.events] } }
}
