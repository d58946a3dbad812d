import type { OutlookQuestion } from '@holdfast/inference'

/** The long part of a question, which is the same from one question of a page to the next. */
type Log = Pick<OutlookQuestion, 'system' | 'observations' | 'events' | 'ownFacts'>

/** A question as it is sent; without a log it has that of the one before. */
export type Lean = Omit<OutlookQuestion, keyof Log> & { readonly log?: Log }

const isSame = (a: Log, b: Log): boolean =>
  a.system === b.system &&
  a.observations === b.observations &&
  a.events === b.events &&
  a.ownFacts === b.ownFacts

/** For one who sends: each question whose log is the very one sent before goes without it. */
export function withoutLog(): (question: OutlookQuestion) => Lean {
  let sent: Log | undefined
  return ({ system, observations, events, ownFacts, ...rest }) => {
    const log: Log = { system, observations, events, ...(ownFacts ? { ownFacts } : {}) }
    if (sent && isSame(sent, log)) return rest
    sent = log
    return { ...rest, log }
  }
}

/** For one who receives: the same log is the same objects from one question to the next. */
export function withLog(): (lean: Lean) => OutlookQuestion {
  let last: Log | undefined
  return ({ log, ...rest }) => {
    last = log ?? last
    if (!last) throw new Error('The first question came without a log.')
    return { ...last, ...rest }
  }
}
