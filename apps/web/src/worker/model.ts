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
  recentOf,
  type Span,
  shareOfFitting,
  stopped,
} from '@holdfast/inference'
import type { Model } from './answers.ts'
import { type Crew, type Shared, sharedOut } from './crew.ts'

/** A past that is worked out or under way: a lever moves the future alone. */
interface Known {
  readonly asked: string
  readonly coming: Promise<Past>
  past?: Past
  /** Told of its progress: whoever waits for it. */
  tell: (share: number) => void
}

/** Members that are fitted for the first answer to a long span, for each that keeps its books: fitting is quick. */
const fittedFirst = 4

/** Of the time that an outlook takes. */
const shareOfPast = 0.8
/** Of the time that a crew plan takes, which is tried for a year again and again. */
const shareBeforePlan = 0.4

/** Of the time that a start-up takes, which is run on until it is ready. */
const shareBeforeStartUp = 0.7

/** The model that ships. */
export function openModel(crew: Crew): Model {
  /** By how many members work on it. */
  const known = new Map<number, Known>()

  const pastKnown = (question: OutlookQuestion): boolean => {
    const found = known.get(question.members)
    return found?.asked === pastInputs(question) && found.past !== undefined
  }

  function pastOf(question: OutlookQuestion, tell: Known['tell']): Known {
    const { members } = question
    const asked = pastInputs(question)
    const found = known.get(members)
    if (found?.asked === asked) {
      found.tell = tell
      return found
    }
    const { levers: _levers, ...outlook } = question
    const running = {
      onProgress: (share: number) => made.tell(share),
      cancelled: () => known.get(members) !== made,
    }
    const coming = Promise.resolve().then(() =>
      sharedOut(pastInRounds(outlook), { kind: 'past', outlook }, crew, running),
    )
    const made: Known = { asked, coming, tell }
    known.set(members, made)
    coming.then(
      (past) => {
        made.past = past
      },
      () => {
        if (known.get(members) === made) known.delete(members)
      },
    )
    return made
  }

  const ledger: Model['ledger'] = async (question, span, { firstMembers, first, ...running }) => {
    const of = (members: number) => {
      const outlook = { ...question, members }
      return sharedOut(ledgerInRounds(outlook, span), { kind: 'ledger', outlook, span }, crew, running)
    }
    if (firstMembers !== undefined && firstMembers < question.members) first(await of(firstMembers))
    return of(question.members)
  }

  /** Whoever is fitted keeps the books, so that the first members' stand in the whole ledger too. */
  const longLedger: Model['ledger'] = async (question, span, asking) => {
    const { firstMembers = question.members, first, onProgress, cancelled } = asking
    const recent = recentOf(question, span)
    const shared = booksOver(question, span)
    const few = { ...recent, members: fittedFirst * firstMembers }
    const isKnown = pastKnown(recent)
    if (!isKnown && few.members < question.members) {
      const known = await pastOf(few, () => undefined).coming
      const books = await crew.run(shared, bookkeepersOf(known).slice(0, firstMembers))
      first(longLedgerOf(known, question, span, books))
    }
    const shareOfFit = isKnown ? 0 : shareOfFitting(span)
    const known = await pastOf(recent, (share) => onProgress(shareOfFit * share)).coming
    const members = bookkeepersOf(known)
    const books: Ledger[] = []
    while (books.length < members.length) {
      if (cancelled()) throw stopped
      books.push(...(await crew.run(shared, members.slice(books.length, books.length + firstMembers))))
      onProgress(shareOfFit + (1 - shareOfFit) * (books.length / members.length))
      if (books.length === firstMembers && books.length < members.length)
        first(longLedgerOf(known, question, span, books))
    }
    return longLedgerOf(known, question, span, books)
  }

  return {
    async outlook(question, { firstMembers = question.members, first, onProgress, cancelled }) {
      const tell = (share: number) => onProgress(shareOfPast * share)
      const isFirst = firstMembers < question.members && pastKnown(question)
      if (firstMembers < question.members && !isFirst) {
        // An ensemble of fewer is there sooner, and moves with the levers until the whole one is.
        const few = { ...question, members: firstMembers }
        const past = await pastOf(few, tell).coming
        first(outlookOf(past, few, await crew.run(futureOf(past, few), past.members.map(presentOf))))
      }
      const past = await pastOf(question, tell).coming
      const members = past.members.map(presentOf)
      const future = futureOf(past, question)
      const courses: Course[] = []
      while (courses.length < members.length) {
        if (cancelled()) throw stopped
        courses.push(
          ...(await crew.run(future, members.slice(courses.length, courses.length + firstMembers))),
        )
        onProgress(shareOfPast + (1 - shareOfPast) * (courses.length / members.length))
        if (isFirst && courses.length === firstMembers) first(outlookOf(past, question, courses))
      }
      return outlookOf(past, question, courses)
    },
    async ladder(question, wishes, { onProgress }) {
      const past = await pastOf(question, onProgress).coming
      const { ladderOf } = await import('./ladder.ts')
      return { ladder: ladderOf(past, question, wishes), processes: [] }
    },
    async reach(question, { onProgress, cancelled }) {
      const past = await pastOf(question, (share) => onProgress(shareOfPast * share)).coming
      const { reachOfPast } = await import('./reach.ts')
      return reachOfPast(past, question, {
        onProgress: (share) => onProgress(shareOfPast + (1 - shareOfPast) * share),
        cancelled,
      })
    },
    async startUp(question, { onProgress, cancelled }) {
      const { startUpOfPast, startUpQuestion } = await import('./start-up.ts')
      const past = await pastOf(startUpQuestion(question), (share) => onProgress(shareBeforeStartUp * share))
        .coming
      return startUpOfPast(past, question, {
        onProgress: (share) => onProgress(shareBeforeStartUp + (1 - shareBeforeStartUp) * share),
        cancelled,
      })
    },
    async crew(question, wishes, { onProgress, cancelled }) {
      const { crewOfPast, withEverPresent } = await import('./crew-plan.ts')
      const asked = withEverPresent(question)
      const past = await pastOf(asked, (share) => onProgress(shareBeforePlan * share)).coming
      return crewOfPast(past, asked, question, wishes, {
        onProgress: (share) => onProgress(shareBeforePlan + (1 - shareBeforePlan) * share),
        cancelled,
      })
    },
    ledger: (question, span, asking) => (isLong(span) ? longLedger : ledger)(question, span, asking),
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

function pastInputs({ levers: _levers, horizonDays: _horizon, ...rests }: OutlookQuestion): string {
  return JSON.stringify(rests)
}
