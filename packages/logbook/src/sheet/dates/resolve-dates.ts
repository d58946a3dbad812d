import { type Account, placeName } from '../cells/account.ts'
import type { Moment } from '../cells/gathered.ts'
import { grouped } from '../grouped.ts'
import type { Questions } from '../questions.ts'
import { civil } from './civil.ts'
import { dateOrder, inOrder } from './date-order.ts'
import { dateSlips } from './date-slips.ts'
import type { DateText } from './parse-date.ts'

/** When something was read. */
export interface When {
  readonly date: string
  readonly time?: string
  readonly half?: 'am' | 'pm'
  /** The date cell, where the date was mended by an answer. */
  readonly dateAsWritten?: string
}

/** The day of a moment, or why it has none: it waits for an answer, or the calendar has no such day. */
export type Resolved = When | 'waits' | 'wrong'

/** Gives every moment its day; asks for the order of day and month, the year, and what is out of order. */
export function resolveDates(
  moments: readonly Moment[],
  questions: Questions,
  account: Account,
): (moment: Moment) => Resolved {
  const found = new Map<string, Resolved>()
  for (const group of grouped(moments, ({ key }) => key).values()) {
    const ordered = inDecidedOrder(group, questions)
    for (const run of grouped(ordered, ({ moment }) => moment.run).values()) {
      const days = run.map(withYears(questions))
      settle(days, questions, account, found)
    }
  }
  // the values of a row share their moment, and then what it came to
  const known = new WeakMap<Moment, Resolved>()
  return (moment) => {
    const before = known.get(moment)
    if (before !== undefined) return before
    const said = found.get(keyOf(moment)) ?? 'wrong'
    const resolved =
      typeof said === 'string' || moment.half === undefined ? said : { ...said, half: moment.half }
    known.set(moment, resolved)
    return resolved
  }
}

const keyOf = ({ said, ...place }: Moment): string => `${placeName(place)} ${said.time ?? ''}`

interface Said {
  readonly moment: Moment
  /** Undefined while the order is not known. */
  readonly said?: DateText
}

function inDecidedOrder(group: readonly Moment[], questions: Questions): readonly Said[] {
  const [first] = group
  const decided = dateOrder(
    group.map(({ said }) => said),
    first?.context.year,
  )
  if (decided !== undefined || first === undefined)
    return group.map((moment) => ({
      moment,
      said: inOrder(moment.said, decided === 'month first' ? decided : 'day first'),
    }))
  const asked = { key: first.key, where: first.where }
  const question = 'Day first or month first? The dates can be read both ways.'
  const open = group.filter(({ said }) => said.either !== undefined)
  const answer = questions.choose(
    asked,
    'date-order',
    question,
    ['month first', 'day first'],
    open.map(placeName),
  )
  return group.map((moment) => {
    if (moment.said.either === undefined) return { moment, said: moment.said }
    const order = answer === 'month first' || answer === 'day first' ? answer : undefined
    return order === undefined ? { moment } : { moment, said: inOrder(moment.said, order) }
  })
}

interface Day {
  readonly moment: Moment
  readonly year?: number
  readonly month?: number
  readonly day?: number
  readonly time?: string
}

/** Fills in the year that stands in a title; from December on to January it is the next one. */
function withYears(questions: Questions): (said: Said) => Day {
  let [year, month]: [number | undefined, number | undefined] = [undefined, undefined]
  return ({ moment, said }) => {
    if (said === undefined) return { moment }
    const ofMonth = said.month ?? moment.context.month
    if (said.year !== undefined) {
      year = said.year
      month = ofMonth
    } else {
      const start = moment.context.year ?? askYear(moment, questions)
      year ??= start
      if (year !== undefined && month !== undefined && ofMonth !== undefined) {
        if (month - ofMonth >= 6) year++
        else if (ofMonth - month >= 6) year--
      }
      month = ofMonth
    }
    return {
      moment,
      ...(year !== undefined && { year }),
      ...(ofMonth !== undefined && { month: ofMonth }),
      ...(said.day !== undefined && { day: said.day }),
      ...(said.time !== undefined && { time: said.time }),
    }
  }
}

function askYear(moment: Moment, questions: Questions): number | undefined {
  const question = 'No year is written: in which year does the sheet begin?'
  const answer = Number(questions.choose(moment, 'year', question, [], [placeName(moment)]))
  return answer >= 1950 && answer <= 2150 ? answer : undefined
}

function settle(
  days: readonly Day[],
  questions: Questions,
  account: Account,
  found: Map<string, Resolved>,
): void {
  const dated: { readonly moment: Moment; readonly date: string; readonly time?: string }[] = []
  for (const { moment, year, month, day, time } of days) {
    if (year === undefined || month === undefined || day === undefined) {
      found.set(
        keyOf(moment),
        moment.said.day === undefined && moment.said.either === undefined ? 'wrong' : 'waits',
      )
      continue
    }
    const date = civil(year, month, day)?.toString()
    if (date === undefined) {
      found.set(keyOf(moment), 'wrong')
      account.list(moment, moment.written, 'no day of the calendar')
    } else dated.push({ moment, date, ...(time !== undefined && { time }) })
  }
  const slips = new Map(dateSlips(dated.map(({ date }) => date)).map((slip) => [slip.at, slip]))
  for (const [at, { moment, date, time }] of dated.entries()) {
    const when = (day: string): When => ({ date: day, ...(time !== undefined && { time }) })
    const slip = slips.get(at)
    if (slip === undefined) {
      found.set(keyOf(moment), when(date))
      continue
    }
    const { likely, why } = slip
    account.point(moment, moment.written, why, 'asked', likely)
    const options = [...(likely === undefined ? [] : [likely]), date, 'leave out']
    const asked = { key: placeName(moment), where: placeName(moment) }
    const question = `"${moment.written}" is ${why}. Which date is it?`
    const answer = questions.choose(asked, 'date', question, options, [placeName(moment)], likely)
    const mended = answer !== undefined && answer !== date ? { dateAsWritten: moment.written } : {}
    if (answer === 'leave out') found.set(keyOf(moment), 'wrong')
    else found.set(keyOf(moment), answer === undefined ? 'waits' : { ...when(answer), ...mended })
  }
}
