import { plain } from '../../figure/numbers.ts'
import type { Sentence } from '../../figure/sentence.ts'
import { fanFigure, type OutlookGround, stepAt } from './figures.ts'
import type { Subject } from './subjects.ts'

/** What a fan says in words: today, four weeks on, and where that lies in the coral band. */
export function fanSentence(subject: Subject, ground: OutlookGround, moved: boolean): Sentence {
  const { asOf } = ground.answer.outlook
  const now = fanFigure(subject, stepAt(subject, asOf), ground)
  const later = fanFigure(subject, stepAt(subject, asOf + 28), ground)
  return [
    `${subject.name} stands at `,
    now,
    moved ? ' today and, with the levers where you set them, at ' : ' today and, kept as it is, at ',
    later,
    ` in four weeks. ${bandWords(subject, later)}`,
  ]
}

function bandWords(
  { band, unit, factor }: Subject,
  later: { readonly value: number; readonly low: number; readonly high: number },
): string {
  if (!band) return ''
  const [low, high] = [band.low * factor, band.high * factor]
  const range = `where corals want it, ${plain(low)} to ${plain(high)} ${unit.replace(' ', '\u00a0')}`
  if (later.low >= low && later.high <= high) return `All of that lies ${range}.`
  if (later.low > high) return `All of that lies above ${range}.`
  if (later.high < low) return `All of that lies below ${range}.`
  if (later.value > high) return `More than half of that lies above ${range}.`
  if (later.value < low) return `More than half of that lies below ${range}.`
  return `The middle of that lies ${range}; its interval reaches beyond.`
}
