import { type Answers, readSheet, type Sheet, type SheetQuestion } from '@holdfast/logbook'

import { regionOf } from './place.ts'
import type { TrueQuestion, Truth } from './truth.ts'

type Topic = SheetQuestion['topic']
type Kind = Exclude<Topic, `${string}-form`> | 'form'

const kindOfTopic = (topic: Topic): Kind => (topic.endsWith('-form') ? 'form' : topic) as Kind

/** What a question of a truth file is about, by its options first and by its words. */
function kindOf({ id, question, options, assumed }: TrueQuestion): Kind {
  const offered = options.join(' | ')
  const all = `${id} ${question} ${offered}`
  if (/(?:day|month) first|day[/.-]month|month[/.-]day|d\/m|m\/d/i.test(offered)) return 'date-order'
  if (/\bold kit\b|\bnew kit\b|which kit/i.test(all) || /kit.?change/i.test(id)) return 'kit-change'
  if (/\d+\/\d+/.test(offered) && /gravity|SG|density|Dichte/i.test(all)) return 'sg-reference'
  if (/practical/i.test(offered) && /absolute|g\/kg/i.test(offered)) return 'salinity-scale'
  if (/gallon/i.test(all)) return 'gallon'
  if (/below which|limit|detect/i.test(`${id} ${question}`)) return 'limit'
  if (/slip|factor|times (?:their|its)|neighbours/i.test(`${id} ${question}`)) return 'unit-slip'
  if (
    options.length > 0 &&
    options.every((one) => /^(?:as )?(?:NO[23](?:-N)?|PO4(?:-P)?|NH[34](?:-N)?|N|P)(?![\w/])/.test(one))
  )
    return 'form'
  if (/which year|in which year/i.test(question)) return 'year'
  if (options.length > 1 && options.some((one) => /^\d{4}-\d\d-\d\d/.test(one))) return 'date'
  return /which (?:number|value|of the two)/i.test(question) && !/unit/i.test(id)
    ? 'value'
    : assumed === ''
      ? 'limit'
      : 'unit'
}

/** Whether a question of ours is the one of the truth: of one kind, about one place. */
export function meets(ours: SheetQuestion, theirs: TrueQuestion): boolean {
  if (kindOfTopic(ours.topic) !== kindOf(theirs)) return false
  const isThere = regionOf(theirs.where)
  return ours.cells.some(isThere)
}

/** Where nothing has to be chosen for the readings of the truth: the value is left as the sheet has it. */
const leavesOpen = (assumed: string): boolean =>
  /not stated|as written|^$/i.test(assumed) && !/^as /i.test(assumed)

/** Whether cells must wait for the answer: not for a limit that stays unknown, nor for a kit. */
export const mustWait = (theirs: TrueQuestion): boolean =>
  !leavesOpen(theirs.assumed) && kindOf(theirs) !== 'limit'

function answerOf(ours: SheetQuestion, truth: Truth): string | undefined {
  const theirs = truth.ambiguous.find((one) => meets(ours, one))
  if (theirs !== undefined) {
    if (leavesOpen(theirs.assumed)) return undefined
    if (ours.options.length === 0) return /\d+(?:[.,]\d+)?/.exec(theirs.assumed)?.[0]
    const assumed = spelled(theirs.assumed)
    return (
      ours.options.find((option) => spelled(option) === assumed) ??
      ours.options.find(
        (option) => spelled(option).startsWith(assumed) || assumed.startsWith(spelled(option)),
      )
    )
  }
  if (ours.waiting === 0) return undefined
  // what the truth lists as odd and reads all the same was asked of its maker: its date and figure tell
  const isOdd = truth.odd_cells.some(({ cell }) => ours.cells.some(regionOf(cell)))
  if (!isOdd) return undefined
  const reading = truth.readings.find(
    ({ cell, date_as_written }) =>
      ours.cells.includes(cell) ||
      (date_as_written !== undefined && ours.question.includes(`"${date_as_written}"`)),
  )
  return ours.topic === 'date' ? ours.options.find((option) => option === reading?.date) : ours.likely
}

const sameWords: readonly (readonly [RegExp, string])[] = [
  [/15\.6\/15\.6.*|60\/60.*/, '60/60'],
  [/^ppm$/, 'mg/l'],
  [/^ppb$/, 'µg/l'],
]

function spelled(option: string): string {
  const plain = option
    .toLowerCase()
    .replace(/\(.*?\)/g, '')
    .replace(/[\s°]/g, '')
    .replace(/(\d\/\d+)c$/, '$1')
  const [, same] = sameWords.find(([rule]) => rule.test(plain)) ?? []
  return same ?? plain
}

/** A sheet as it is read when its questions are answered as the truth assumes, and all that was asked on the way. */
export function answeredSheet(
  bytes: Uint8Array,
  truth: Truth,
): { readonly first: Sheet; readonly sheet: Sheet; readonly asked: readonly SheetQuestion[] } {
  const first = readSheet(bytes, truth.file)
  const asked = new Map(first.questions.map((question) => [question.id, question]))
  const answers: Record<string, string> = {}
  let sheet = first
  for (let round = 0; round < 6; round++) {
    const before = Object.keys(answers).length
    for (const question of sheet.questions) {
      const answer = answerOf(question, truth)
      if (answer !== undefined) answers[question.id] = answer
    }
    if (Object.keys(answers).length === before) break
    sheet = readSheet(bytes, truth.file, answers satisfies Answers)
    for (const question of sheet.questions) if (!asked.has(question.id)) asked.set(question.id, question)
  }
  return { first, sheet, asked: [...asked.values()] }
}
