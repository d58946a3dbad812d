import { type Band, type Commissioning, commissioning, startUpQuestion } from '@holdfast/commissioning'
import {
  askedWords,
  avoidedWords,
  conditionWords,
  deedWords,
  peakWords,
  shownWords,
  stateWords,
  type Told,
  verdictWords,
  type Writing,
} from '@holdfast/commissioning/words'
import { past } from '@holdfast/inference'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { figure } from '../figure.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { progress } from '../progress.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface CommissioningOptions extends Where {
  readonly system?: string
  readonly members: number
  readonly seed: number
  readonly json?: true
}

/** Whether a new system is ready for its first animals, what is still to be shown, and when that may be. */
export async function commissioningCommand(options: CommissioningOptions, terminal: Terminal): Promise<void> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { members, seed } = options
  const running = progress(terminal, `Start-up over ${members} members`)
  const question = { system, observations, events, ownFacts, from, asOf, horizonDays: 1, members, seed }
  const share = (done: number, of: number) => ({
    ...running,
    onProgress: (part: number) => running.onProgress(done + of * part),
  })
  const known = past(startUpQuestion(question), share(0, 0.7))
  const answer = commissioning(known, question, share(0.7, 0.3))
  running.done()
  terminal.out(options.json ? JSON.stringify(asJson(log, answer), null, 2) : inWords(log, answer))
}

/** ISO date of a day; null beyond what was looked ahead. */
const dateIn =
  ({ system }: SystemLog) =>
  (day: number): string | null =>
    Number.isFinite(day) ? dateOf(day, system.timeZone) : null

function asJson(log: SystemLog, answer: Commissioning): unknown {
  const date = dateIn(log)
  const dates = ({ low, middle, high }: Band) => ({ p05: date(low), p50: date(middle), p95: date(high) })
  const { asOf, until, readyNow, ready, stocked, conditions, peaks, courses, next, not } = answer
  return {
    system: log.system.id,
    as_of: date(asOf),
    ready_now: readyNow,
    ready: dates(ready),
    looked_ahead_to: date(until),
    stocked,
    next,
    not,
    conditions: conditions.map(({ shown, ...one }) => ({
      ...one,
      ...(shown === undefined ? {} : { shown: { ...shown, day: date(shown.day) } }),
    })),
    peaks: peaks.map(({ quantity, unit, by, day, height }) => ({
      quantity,
      unit,
      by,
      dates: dates(day),
      height: { p05: height.low, p50: height.middle, p95: height.high },
    })),
    courses: courses.map(({ quantity, unit, days, bands }) => ({
      quantity,
      unit,
      dates: days.map(date),
      p05: bands.map(({ low }) => low),
      p50: bands.map(({ middle }) => middle),
      p95: bands.map(({ high }) => high),
    })),
    remarks: log.remarks,
  }
}

function inWords(log: SystemLog, answer: Commissioning): string {
  const date = (day: number): string => dateIn(log)(day) ?? ''
  const writing: Writing = { date, number: (value) => String(Number(value.toPrecision(2))) }
  const { asOf, peaks, conditions, next, not } = answer
  return [
    `Start-up of ${log.system.name} on ${date(asOf)}`,
    verdictWords(answer, writing),
    ['What to do next', ...next.map((deed) => deedLine(deedWords(deed, writing)))].join('\n'),
    ...(not.length === 0
      ? []
      : [['What not to do', ...not.map((one) => deedLine(avoidedWords[one]))].join('\n')]),
    table(
      [
        { heading: 'Before the first animals' },
        { heading: 'Shown' },
        { heading: 'What is' },
        { heading: 'Asked' },
      ],
      conditions.map((one) => [
        conditionWords[one.name].says,
        stateWords[one.state],
        shownWords(one, writing),
        askedWords(one, writing),
      ]),
    ),
    table(
      [
        { heading: 'Peak of' },
        { heading: 'Date' },
        { heading: 'Height', stands: 'right' },
        { heading: 'Unit' },
        { heading: 'Told' },
      ],
      peaks.map(({ quantity, day, height, unit, by }) => [
        quantity,
        date(day.middle),
        figure({ value: height.middle, low: height.low, high: height.high }),
        unit,
        peakWords[by],
      ]),
    ),
    ...log.remarks,
  ].join('\n\n')
}

const deedLine = ({ caution, says, why }: Told): string =>
  `  ${[caution, says, why].filter((part) => part !== undefined).join(' ')}`
