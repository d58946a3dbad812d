import type { Entry } from './entries/entry.ts'
import type { ZoneOn } from './entries/system-at.ts'
import { lateOn, modelDay, modelDayOfTime } from './model-day.ts'

const minute = 1 / 1440

const isReading = ({ kind }: Entry): boolean => kind === 'reading' || kind === 'survey'

/** Kinds that are no part of a day: they neither read the water nor change it. */
const outsideTime: readonly Entry['kind'][] = [
  'note',
  'attachment',
  'system',
  'fact-override',
  'shown-outlook',
  'crew-plan',
]

/** Moments of a civil day on the model's clock: its midnight, noon, 13:00, and half a minute before its end. */
interface CivilDay {
  readonly midnight: number
  readonly noon: number
  readonly one: number
  readonly end: number
}

/** Sets entries on the model's clock, readings of a day before its changes. */
export class DayClock {
  readonly #zoneOn: ZoneOn
  readonly #lastReading = new Map<string, number>()
  readonly #firstEvent = new Map<string, number>()
  readonly #days = new Map<string, CivilDay>()

  constructor(entries: readonly Entry[], zoneOn: ZoneOn) {
    this.#zoneOn = zoneOn
    for (const entry of entries) {
      if (entry.precision === 'day' || outsideTime.includes(entry.kind)) continue
      const [date, day] = [entry.at.slice(0, 10), modelDayOfTime(entry.at)]
      if (isReading(entry)) this.#lastReading.set(date, Math.max(day, this.#lastReading.get(date) ?? day))
      else this.#firstEvent.set(date, Math.min(day, this.#firstEvent.get(date) ?? day))
    }
  }

  reading({ at, precision }: Entry): number {
    if (precision === 'minute') return modelDayOfTime(at)
    const firstEvent = this.#firstEvent.get(at) ?? Number.POSITIVE_INFINITY
    // Before an event at midnight there is no minute of that day: of one instant the reading counts first.
    const { noon, midnight } = this.#day(at)
    return Math.max(midnight, Math.min(noon, firstEvent - minute))
  }

  event({ at, precision }: Entry): number {
    if (precision === 'minute') return modelDayOfTime(at)
    const lastReading = this.#lastReading.get(at) ?? Number.NEGATIVE_INFINITY
    const { one, end } = this.#day(at)
    return Math.min(end, Math.max(one, lastReading + minute))
  }

  /** Moments of a civil day; a log has many entries of one day, and calendars are slow. */
  #day(date: string): CivilDay {
    const known = this.#days.get(date)
    if (known !== undefined) return known
    const zone = this.#zoneOn(date)
    const [midnight, noon, one] = [0, 12, 13].map((hour) => modelDay(date, hour, zone))
    const day = { midnight, noon, one, end: lateOn(date, zone) }
    this.#days.set(date, day)
    return day
  }
}
