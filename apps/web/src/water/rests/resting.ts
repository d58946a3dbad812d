import type { ComputedFigure } from '../../figure/computed.ts'
import { plain, written } from '../../figure/numbers.ts'
import type { Sentence } from '../../figure/sentence.ts'
import type { SystemData } from '../../shell/system-data.ts'
import { countText } from '../../ways/counts.ts'
import type { LedgerAnswer, OutlookAnswer } from '../../worker/answers.ts'
import { basinFigure, streamFigure } from '../ledger/figures.ts'
import { keptPlaces } from '../ledger/places.ts'
import { pictured, riverOf } from '../ledger/streams.ts'
import { fanFigure, stepAt } from '../outlook/figures.ts'
import { type Subject, subjectsOf } from '../outlook/subjects.ts'

/** What the page has worked out; a part is absent while it is being worked out. */
export interface WorkedOut {
  readonly data: SystemData
  readonly ledger: LedgerAnswer | undefined
  readonly outlook: OutlookAnswer | undefined
}

/**
 * The figures that rest on an entry: those whose derivation names it, first those that rest on few others. One question asked the other way
 * round, so that the two can never tell different things.
 */
export const restingOn = (entry: string, worked: WorkedOut): readonly ComputedFigure[] =>
  [...figuresOfLedger(worked), ...figuresOfOutlook(worked)]
    .map((figure) => ({ figure, entries: figure.derivation().entries }))
    .filter(({ entries }) => entries.includes(entry))
    .toSorted((a, b) => a.entries.length - b.entries.length)
    .map(({ figure }) => figure)

function figuresOfLedger({ ledger: answer, data }: WorkedOut): readonly ComputedFigure[] {
  if (answer === undefined) return []
  const ground = { answer, data }
  return pictured.flatMap((atom) => {
    const river = riverOf(answer.ledger, atom, keptPlaces(data.events))
    const moving = [...river.sources, ...river.exports].filter(({ amount_umol }) => amount_umol > 0)
    return [
      ...moving.map((stream) => streamFigure(stream, river, ground)),
      ...river.basins.map((basin) => basinFigure(basin, river, ground)),
    ]
  })
}

function figuresOfOutlook({ outlook: answer, data }: WorkedOut): readonly ComputedFigure[] {
  if (answer === undefined) return []
  const { asOf } = answer.outlook
  return subjectsOf(answer).flatMap((subject) =>
    [asOf, asOf + 28].map((day) => fanFigure(subject, stepAt(subject, day), { answer, data })),
  )
}

/** What the model makes of an entry, in a sentence. */
export function roleOf(entry: string, worked: WorkedOut): Sentence {
  const { data, outlook } = worked
  const read = data.observations.find((reading) => reading.entry === entry)
  if (read !== undefined) {
    const before = [
      `It is one of ${countText(data.observations.length)} readings by which the simulated tanks are weighed. `,
    ]
    return outlook === undefined ? before : [...before, ...metBy(entry, { answer: outlook, data })]
  }
  if (data.events.some((event) => event.entry === entry))
    return ['It happens in each simulated tank on its day, and moves what it moved in yours.']
  return [
    'The model takes nothing from it: it is a quantity that the model does not follow, or it was corrected or taken back since.',
  ]
}

/** What was read beside what the tanks have on that day. */
function metBy(
  entry: string,
  ground: { readonly answer: OutlookAnswer; readonly data: SystemData },
): Sentence {
  const subject = subjectsOf(ground.answer).find(({ readings }) =>
    readings.some(({ reading }) => reading.entry === entry),
  )
  const read = subject?.readings.find(({ reading }) => reading.entry === entry)
  if (subject === undefined || read === undefined) return []
  const tanks = fanFigure(subject, stepAt(subject, read.reading.day), ground)
  return [`You read ${readWords(subject, read)}; that day the tanks have `, tanks, '.']
}

function readWords({ unit, factor }: Subject, { reading, low, high }: Subject['readings'][number]): string {
  const read = `${plain(reading.value * factor)} ${unit}`
  if (reading.belowDetection) return `less than ${read}`
  const put = written(reading.value * factor, low * factor, high * factor)
  return `${read}, which with the error of its kit is ${put.low} to ${put.high}`
}
