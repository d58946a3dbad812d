import type { Ledger } from '@holdfast/ecosystem'
import {
  type Bookkeeper,
  bookkeepersOf,
  bookkeeping,
  type Course,
  futures,
  isLong,
  ledgerInRounds,
  longLedgerOf,
  type Member,
  type OutlookQuestion,
  outlookOf,
  type Past,
  type Present,
  pastInRounds,
  type Running,
  recentOf,
  type Span,
  shareOfFitting,
  stopped,
} from '@holdfast/inference'
import type { Model } from './answers.ts'
import { type Crew, type Shared, sharedOut } from './crew.ts'
import { pastInputs } from './past-inputs.ts'
import { inTurns, type Urgency, urgency } from './turns.ts'

/** A past that is worked out or under way: a lever moves the future alone. */
interface Known {
  readonly coming: Promise<Past>
  past?: Past
  /** Who waits for it, to be told how far it is. */
  readonly askers: Running[]
}

/** Pasts that are kept: of few members and of all, for what two views ask. */
const pastsKept = 4

/** Members that are fitted for the first answer to a long span, for each that keeps its books: fitting is quick. */
const fittedFirst = 4

/** Of the time that an outlook takes. */
const shareOfPast = 0.8
/** Of the time that a crew plan takes, which is tried for a year again and again. */
const shareBeforePlan = 0.4

/** Of the time that a start-up takes, which is run on until it is ready. */
const shareBeforeStartUp = 0.7

/** Members between which messages are let in, once a first answer is there: a finger that moves on is not kept waiting. */
const afterFirst = 4

/** The model that ships. */
export function openModel(shared: Crew): Model {
  const crew = inTurns(shared)
  /** By what it rests on, the latest asked last. */
  const known = new Map<string, Known>()

  const nameOf = (question: OutlookQuestion) => `${question.members} ${pastInputs(question)}`

  const pastKnown = (question: OutlookQuestion): boolean => known.get(nameOf(question))?.past !== undefined

  function pastOf(question: OutlookQuestion, wanted: Urgency, asker: Running): Promise<Past> {
    const name = nameOf(question)
    const found = known.get(name) ?? begun(question, wanted, name)
    known.delete(name)
    known.set(name, found)
    for (const [oldest] of known) if (known.size > pastsKept) known.delete(oldest)
    if (!found.past) found.askers.push(asker)
    return found.coming
  }

  function begun({ levers: _levers, ...outlook }: OutlookQuestion, wanted: Urgency, name: string): Known {
    const askers: Running[] = []
    const running: Running = {
      onProgress: (share) => {
        for (const asker of askers) if (!asker.cancelled()) asker.onProgress(share)
      },
      cancelled: () => known.get(name) !== made,
    }
    const coming = Promise.resolve().then(() =>
      sharedOut(pastInRounds(outlook), { kind: 'past', outlook }, crew(wanted), running),
    )
    const made: Known = { coming, askers }
    coming.then(
      (past) => {
        made.past = past
        askers.length = 0
      },
      () => {
        if (known.get(name) === made) known.delete(name)
      },
    )
    return made
  }

  const ledger: Model['ledger'] = async (question, span, { firstMembers, first, ...running }) => {
    const of = (members: number, wanted: Urgency) => {
      const outlook = { ...question, members }
      return sharedOut(
        ledgerInRounds(outlook, span),
        { kind: 'ledger', outlook, span },
        crew(wanted),
        running,
      )
    }
    if (firstMembers !== undefined && firstMembers < question.members)
      first(await of(firstMembers, urgency.firstLedger))
    return of(question.members, urgency.wholeLedger)
  }

  /** Whoever is fitted keeps the books, so that the first members' stand in the whole ledger too. */
  const longLedger: Model['ledger'] = async (question, span, asking) => {
    const { firstMembers = question.members, first, onProgress, cancelled } = asking
    const recent = recentOf(question, span)
    const shared = booksOver(question, span)
    const few = { ...recent, members: fittedFirst * firstMembers }
    const isKnown = pastKnown(recent)
    if (!isKnown && few.members < question.members) {
      const known = await pastOf(few, urgency.firstLedger, { onProgress: () => undefined, cancelled })
      const books = await crew(urgency.firstLedger).run(shared, bookkeepersOf(known).slice(0, firstMembers))
      first(longLedgerOf(known, question, span, books))
    }
    const shareOfFit = isKnown ? 0 : shareOfFitting(span)
    const known = await pastOf(recent, urgency.wholeOutlook, {
      onProgress: (share) => onProgress(shareOfFit * share),
      cancelled,
    })
    const members = bookkeepersOf(known)
    const books: Ledger[] = []
    while (books.length < members.length) {
      if (cancelled()) throw stopped
      books.push(
        ...(await crew(urgency.wholeLedger).run(
          shared,
          members.slice(books.length, books.length + firstMembers),
        )),
      )
      onProgress(shareOfFit + (1 - shareOfFit) * (books.length / members.length))
      if (books.length === firstMembers && books.length < members.length)
        first(longLedgerOf(known, question, span, books))
    }
    return longLedgerOf(known, question, span, books)
  }

  return {
    async outlook(question, { firstMembers = question.members, first, onProgress, cancelled }) {
      const running = { onProgress: (share: number) => onProgress(shareOfPast * share), cancelled }
      const isFirst = firstMembers < question.members && pastKnown(question)
      if (firstMembers < question.members && !isFirst) {
        // An ensemble of fewer is there sooner, and moves with the levers until the whole one is.
        const few = { ...question, members: firstMembers }
        const past = await pastOf(few, urgency.firstOutlook, running)
        const members = past.members.map(presentOf)
        first(outlookOf(past, few, await crew(urgency.firstOutlook).run(futureOf(past, few), members)))
      }
      const past = await pastOf(question, urgency.wholeOutlook, running)
      const members = past.members.map(presentOf)
      const future = futureOf(past, question)
      const courses: Course[] = []
      while (courses.length < members.length) {
        if (cancelled()) throw stopped
        const slice = isFirst && courses.length > 0 ? afterFirst : firstMembers
        const wanted = isFirst && courses.length === 0 ? urgency.firstOutlook : urgency.wholeOutlook
        courses.push(
          ...(await crew(wanted).run(future, members.slice(courses.length, courses.length + slice))),
        )
        if (isFirst && courses.length === firstMembers) first(outlookOf(past, question, courses))
        onProgress(shareOfPast + (1 - shareOfPast) * (courses.length / members.length))
      }
      return outlookOf(past, question, courses)
    },
    async ladder(question, wishes, running) {
      const past = await pastOf(question, urgency.wholeOutlook, running)
      const { ladderOf } = await import('./ladder.ts')
      return { ladder: ladderOf(past, question, wishes), processes: [] }
    },
    async reach(question, { onProgress, cancelled }) {
      const past = await pastOf(question, urgency.wholeOutlook, {
        onProgress: (share) => onProgress(shareOfPast * share),
        cancelled,
      })
      const { reachOfPast } = await import('./reach.ts')
      return reachOfPast(past, question, {
        onProgress: (share) => onProgress(shareOfPast + (1 - shareOfPast) * share),
        cancelled,
      })
    },
    async startUp(question, { onProgress, cancelled }) {
      const { startUpOfPast, startUpQuestion } = await import('./start-up.ts')
      const past = await pastOf(startUpQuestion(question), urgency.wholeOutlook, {
        onProgress: (share) => onProgress(shareBeforeStartUp * share),
        cancelled,
      })
      return startUpOfPast(past, question, {
        onProgress: (share) => onProgress(shareBeforeStartUp + (1 - shareBeforeStartUp) * share),
        cancelled,
      })
    },
    async crew(question, wishes, { onProgress, cancelled }) {
      const { crewOfPast, withEverPresent } = await import('./crew-plan.ts')
      const asked = withEverPresent(question)
      const past = await pastOf(asked, urgency.wholeOutlook, {
        onProgress: (share) => onProgress(shareBeforePlan * share),
        cancelled,
      })
      return crewOfPast(past, asked, question, wishes, {
        onProgress: (share) => onProgress(shareBeforePlan + (1 - shareBeforePlan) * share),
        cancelled,
      })
    },
    ledger: (question, span, asking) => (isLong(span) ? longLedger : ledger)(question, span, asking),
    rest() {
      for (const [name, { past }] of known) if (!past) known.delete(name)
    },
  }
}

const futureOf = (past: Past, outlook: OutlookQuestion): Shared<Present, Course> => ({
  task: { kind: 'future', outlook },
  run: futures(past.model, outlook),
})

const booksOver = (outlook: OutlookQuestion, span: Span): Shared<Bookkeeper, Ledger> => ({
  task: { kind: 'books', outlook, span },
  run: bookkeeping(outlook, span),
})

/** What its future needs of a member, and no more: it may have to be sent. */
const presentOf = ({ parameters, states, settings }: Member): Present => ({ parameters, states, settings })
