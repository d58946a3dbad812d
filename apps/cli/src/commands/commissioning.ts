import {
  type Band,
  type Commissioning,
  type Condition,
  commissioning,
  startUpQuestion,
} from '@holdfast/commissioning'
import { past } from '@holdfast/inference'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { figure, percent } from '../figure.ts'
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

const titles: Readonly<Record<Condition['name'], string>> = {
  ammonia_reads_nothing: 'Ammonia reads nothing for days',
  un_ionised_ammonia_low: 'Poisonous (un-ionised) part of the ammonia',
  nitrite_near_nothing: 'Nitrite next to nothing',
  ammonia_challenge_cleared: 'A dose of ammonia gone in time',
  rock_cured: 'Rock gives off next to nothing',
  nitrate_under_limit: 'Nitrate where corals are kept',
  phosphate_under_limit: 'Phosphate where corals are kept',
  salinity_and_temperature_steady: 'Salinity and temperature steady for a week',
  film_showing: 'Diatoms or green film show, for those that eat them',
}

const states: Readonly<Record<Condition['state'], string>> = {
  met: 'yes',
  open: 'not yet',
  'not read': 'not read lately',
  look: 'look for yourself',
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
  const { asOf, until, readyNow, ready, stocked, conditions, peaks, courses } = answer
  return {
    system: log.system.id,
    as_of: date(asOf),
    ready_now: readyNow,
    ready: dates(ready),
    looked_ahead_to: date(until),
    stocked,
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
  const date = dateIn(log)
  const { system } = log
  const { asOf, peaks, conditions } = answer
  return [
    `Start-up of ${system.name} on ${date(asOf)}`,
    verdict(log, answer),
    table(
      [
        { heading: 'Before the first animals' },
        { heading: 'Shown' },
        { heading: 'What is' },
        { heading: 'Asked' },
      ],
      conditions.map((one) => [titles[one.name], states[one.state], shownOf(one, date), askedOf(one)]),
    ),
    table(
      [
        { heading: 'Peak of' },
        { heading: 'Date' },
        { heading: 'Height', stands: 'right' },
        { heading: 'Unit' },
        { heading: 'Told by' },
      ],
      peaks.map(({ quantity, day, height, unit, by }) => [
        quantity,
        date(day.middle) ?? '',
        figure({ value: height.middle, low: height.low, high: height.high }),
        unit,
        by === 'readings' ? 'your readings' : 'the model',
      ]),
    ),
    mind(answer),
    ...log.remarks,
  ].join('\n\n')
}

function mind({ stocked, readyNow }: Commissioning): string {
  if (stocked)
    return 'Animals live in it already: never dose ammonia over them. While ammonia can be read, feed little and change much water at once, matched in temperature and salinity.'
  if (readyNow)
    return 'A large change of matched water first, then a few grazers of film, accustomed slowly and only if there is film to eat; more in lots, weeks apart. Test ammonia on the days after.'
  return 'Until then: no animal, and the lamp stays off. Ammonium chloride and ammonia burn eyes and airways: gloves, glasses, out of reach of children, as the label says.'
}

function verdict(log: SystemLog, { readyNow, ready, until }: Commissioning): string {
  const date = dateIn(log)
  if (readyNow)
    return `Ready for the first few animals since ${date(ready.middle)}, once what you see with your own eyes is as it should be.`
  if (!Number.isFinite(ready.middle))
    return `Not ready, and as it stands not before ${date(until)} in most of the simulated tanks.`
  const last = date(ready.high) ?? `after ${date(until)}`
  return `Not ready. It may be on ${date(ready.middle)} (nine in ten: ${date(ready.low)} to ${last}), if a large part of the water is changed each week and phosphate is bound while rock gives something off, and ammonia is dosed where that is asked.`
}

function shownOf({ name, shown }: Condition, date: (day: number) => string | null): string {
  if (shown === undefined) return ''
  const { value, unit, day, by, belowDetection } = shown
  if (name === 'rock_cured') return `${percent(value)} of the simulated tanks`
  const amount = `${belowDetection ? 'under ' : ''}${Number(value.toPrecision(2))} ${unit}`
  return by === 'reading' ? `${amount}, ${date(day)}` : `${amount}, by the model`
}

function askedOf({ name, limits }: Condition): string {
  const [first, second, third, fourth] = limits.map(({ value, unit }) => `${value} ${unit}`)
  switch (name) {
    case 'ammonia_reads_nothing':
      return `at most ${first} for ${second}`
    case 'ammonia_challenge_cleared':
      return `at least ${first}, gone within ${second}`
    case 'rock_cured':
      return `after a change of all water, ${fourth} in the dark: ammonia at most ${first}, rise under ${second} and ${third}`
    default:
      return first === undefined ? '' : `at most ${first}`
  }
}
