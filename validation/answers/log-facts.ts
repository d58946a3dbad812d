/** What the log itself says: rebounds, doubtful readings, what is inside and what may come in. */

import { dayNumber, daysBetween, isoDate } from '../calendar.ts'
import type { CaseEvent, CaseFile, CaseReading } from '../case-file.ts'
import { caseObservations } from '../case-system.ts'
import { eventsOf, lastPlaced, poured } from '../husbandry.ts'
import { isNoModel } from '../model-answers.ts'
import { isAfterItsEvent } from '../same-day.ts'
import {
  type Answered,
  CannotAnswer,
  type Family,
  needed,
  numberIn,
  type Question,
  textIn,
} from './answer.ts'
import { doubtfulReading } from './doubtful-reading.ts'
import { readingsOf, usualValue } from './readings.ts'

/** A drop counts as undone from this share on, if within so many days. */
const undoneShare = 1 / 3
const undoneWithinDays = 14

export const logAnswers: Family = {
  phosphate_rebound_fraction: {
    unit: '1',
    keys: ['date', 'days'],
    answer: ({ file, check }) => {
      const date = needed(textIn(check, 'date'), 'date of the event')
      const days = needed(numberIn(check, 'days'), 'days')
      return { value: needed(reboundBy(file, date, days), 'phosphate read before, just after and later') }
    },
  },
  phosphate_rebound_after_water_change: { unit: 'yes or no', keys: ['date'], answer: afterWaterChange },
  phosphate_rebound_after_media: { unit: 'yes or no', keys: ['date', 'media'], answer: afterMedia },
  flagged_reading: {
    unit: 'date',
    keys: ['of'],
    answer: ({ file, check }) => {
      const found = needed(doubtfulReading(file, textIn(check, 'of')), 'a reading that stands out')
      return {
        value: found.date,
        alsoCalled: [found.quantity, `${found.quantity} ${found.date}`, found.value],
      }
    },
  },
  below_detection_used_as_upper_bound: {
    unit: 'yes or no',
    answer: ({ file }) => {
      const limits = file.log.readings.filter((reading) => reading.below_detection === true)
      if (limits.length === 0) throw new CannotAnswer('needs a reading below detection')
      const held = caseObservations(file).filter(({ belowDetection }) => belowDetection)
      return { value: limits.every(({ value }) => held.some((one) => one.value === value)) }
    },
  },
  account_inside: {
    unit: 'yes or no',
    keys: ['account'],
    answer: ({ check }) => ({ value: isInside(needed(textIn(check, 'account'), 'account')) }),
  },
  input_allowed_N: { unit: 'words', answer: ({ file }) => ({ value: allowedInputs(file), anyOrder: true }) },
}

/** From the log where it has the readings, else from the model. */
function afterWaterChange({ file, check, model }: Question): Answered {
  const date = textIn(check, 'date')
  const seen = eventsOf(file, 'water change')
    .filter((event) => date === undefined || event.date === date)
    .flatMap((event) => laterDays(file, event).map((days) => reboundBy(file, event.date, days)))
    .filter((share) => share !== undefined)
  if (seen.length > 0) return { value: Math.max(...seen) >= undoneShare }
  const share = model.reboundOfChange(file, undoneWithinDays)
  return isNoModel(share) ? share : { value: share >= undoneShare }
}

/** Media hold phosphate down while they take it: the fortnight counts from the day on which they are spent. */
function afterMedia({ file, check, model }: Question): Answered {
  const placed = needed(textIn(check, 'date') ?? lastPlaced(file), 'media that were placed')
  const spent = model.mediaExhaustedAfter(file, 365)
  if (isNoModel(spent)) return spent
  if (!Number.isFinite(spent)) return { value: false }
  const days = Math.round(spent) + undoneWithinDays
  const share = reboundBy(file, placed, days)
  return {
    value: needed(share, `phosphate read before, after and ${days} days after the media`) >= undoneShare,
  }
}

function laterDays(file: CaseFile, event: CaseEvent): readonly number[] {
  return readingsOf(file, 'phosphate')
    .map((reading) => daysBetween(event.date, reading.date))
    .filter((days) => days > 0 && days <= undoneWithinDays)
}

/** (later - just after) / (just before - just after); undefined where the log has no such readings or no drop. */
function reboundBy(file: CaseFile, date: string, days: number): number | undefined {
  const readings = readingsOf(file, 'phosphate')
  const isAfter = (reading: CaseReading) =>
    reading.date > date || (reading.date === date && isAfterItsEvent(file, reading))
  const before = readings.filter((reading) => !isAfter(reading)).at(-1)
  const after = readings.find(isAfter)
  const later = valueOn(readings.filter(isAfter), isoDate(dayNumber(date) + days))
  if (before === undefined || after === undefined || later === undefined) return undefined
  const low = usualValue(after)
  const drop = usualValue(before) - low
  return drop > 0 ? (later - low) / drop : undefined
}

/** The value on a date, by the straight line between the readings on either side. */
function valueOn(readings: readonly CaseReading[], date: string): number | undefined {
  const left = readings.filter((reading) => reading.date <= date).at(-1)
  const right = readings.find((reading) => reading.date >= date)
  if (left === undefined || right === undefined) return undefined
  const days = daysBetween(left.date, right.date)
  if (days === 0) return usualValue(right)
  const share = daysBetween(left.date, date) / days
  return usualValue(left) + share * (usualValue(right) - usualValue(left))
}

/**
 * Accounts of the ledger by the names of the cases. What a filter holds is inside until it is
 * emptied; what ferric media bound is booked as gone when they bind it, as in the ledger.
 */
const inside: readonly string[] = [
  'water',
  'dissolved',
  'ammonia',
  'nitrite',
  'nitrate',
  'phosphate',
  'dissolved_organics',
  'detritus',
  'bacteria',
  'nitrifiers',
  'rock',
  'sand',
  'surfaces',
  'algae',
  'surface_algae',
  'refugium_algae',
  'scrubber_algae',
  'animals',
  'fish',
  'crew',
  'grazers',
  'corals',
  'coral',
  'mechanical_filter',
]
const outside: readonly string[] = [
  'feed',
  'source_water',
  'salt',
  'dose',
  'air',
  'animals_added',
  'foam',
  'skimmate',
  'siphoned_detritus',
  'water_change',
  'discarded_water',
  'refugium_harvest',
  'scrubber_harvest',
  'harvest',
  'hand_removed_algae',
  'ferric_media',
  'media',
  'spent_media',
  'activated_carbon',
  'animals_removed',
]

function isInside(account: string): boolean {
  const name = account
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_')
  if (inside.includes(name)) return true
  if (outside.includes(name)) return false
  throw new CannotAnswer(`account: "${account}" is none of ${[...inside, ...outside].join(', ')}`)
}

/** Outside accounts that can bring N into this system, by what it is given and what its log tells. */
function allowedInputs(file: CaseFile): readonly string[] {
  const { system, log } = file
  const has = (kind: string) => eventsOf(file, kind).length > 0
  const water = poured(file, 'source water')
  const salt = poured(file, 'RO/DI + salt')
  const fixers = /cyano|dino/
  const reasons: readonly (readonly [string, boolean])[] = [
    ['feed', system.feeds.some((feed) => feed.g_per_day > 0) || has('feed change')],
    ['source_water', water.NO3_mg_L > 0],
    ['salt', salt.NO3_mg_L > 0],
    ['dose', has('dose')],
    [
      'rock',
      has('rock added') || system.rock.some(({ age_days }) => age_days <= daysBetween(file.start, file.asof)),
    ],
    ['animals_added', has('animals added')],
    ['air', log.events.some((event) => event.kind === 'survey' && fixers.test(String(event.algae)))],
  ]
  return reasons.filter(([, holds]) => holds).map(([account]) => account)
}
