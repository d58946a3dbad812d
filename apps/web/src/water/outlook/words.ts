import { plain } from '../../figure/numbers.ts'
import type { Sentence } from '../../figure/sentence.ts'
import { dayText } from '../days.ts'
import { weeksAhead } from './chance.ts'
import { chanceFigure, fanFigure, type OutlookGround, stepAt } from './figures.ts'
import type { Subject } from './subjects.ts'

const inFourWeeks = 28

/** What a fan says in words: on the last day of the log, four weeks later, and where that lies in the coral band. */
export function fanSentence(subject: Subject, ground: OutlookGround): Sentence {
  const { asOf } = ground.answer.outlook
  const now = fanFigure(subject, stepAt(subject, asOf), ground)
  const later = fanFigure(subject, stepAt(subject, asOf + inFourWeeks), ground)
  return [
    `${subject.name}: `,
    now,
    ` on ${dayText(asOf, ground.data.system.timeZone)} and, kept as it is, `,
    later,
    ' four weeks later.',
    bandWords(subject, later),
    ...chanceWords(subject, ground),
  ]
}

/** The same under other levers. */
export function otherSentence(subject: Subject, ground: OutlookGround): Sentence {
  const { asOf } = ground.answer.outlook
  const later = fanFigure(subject, stepAt(subject, asOf + inFourWeeks), ground)
  return [`With ${ground.under?.name ?? ''}: `, later, ' four weeks later.', ...chanceWords(subject, ground)]
}

/** In the last whole week that is foreseen. */
function chanceWords(subject: Subject, ground: OutlookGround): Sentence {
  const weeks = weeksAhead(subject, ground.answer.outlook.asOf)
  const last = weeks.at(-1)
  if (!last) return []
  return [` Chance of being in band in week ${weeks.length}: `, chanceFigure(subject, last, ground), '.']
}

function bandWords(
  { band, unit, factor }: Subject,
  later: { readonly value: number; readonly low: number; readonly high: number },
): string {
  if (!band) return ''
  const [low, high] = [band.low * factor, band.high * factor]
  const range = `where corals want it, ${plain(low)} to ${plain(high)} ${unit.replace(' ', '\u00a0')}`
  if (later.low >= low && later.high <= high) return ` All of that lies ${range}.`
  if (later.low > high) return ` All of that lies above ${range}.`
  if (later.high < low) return ` All of that lies below ${range}.`
  if (later.value > high) return ` More than half of that lies above ${range}.`
  if (later.value < low) return ` More than half of that lies below ${range}.`
  return ` The middle of that lies ${range}; its interval reaches beyond.`
}
