import type { System } from '@holdfast/ecosystem'
import {
  type Entry,
  entriesFromSheet,
  observationsAndEvents,
  readSheet,
  readSystemFile,
} from '@holdfast/logbook'
import { entriesOf, received } from './entries.ts'
import { csvOf, rowsOf, surveysOf } from './readings.ts'
import type { Deed, Story } from './story.ts'
import { type Truth, truthOf } from './truth.ts'

/** The files of the example by name, each as text. */
export type ExampleFiles = Readonly<Record<'system.json' | 'tests.csv' | 'log.json', string>>

/** The system, the spreadsheet and the log of a story; the same text every time, on every machine. */
export function filesOf(story: Story): ExampleFiles {
  const { systemText, system, done } = lived(story)
  const truthOn = truthBy(story, done, system)
  const csv = csvOf(rowsOf(story.tests, truthOn))
  const surveys = entriesOf(story, surveysOf(story.surveys, story.tests.seed, truthOn))
  const log = [...done, ...surveys, ...readingsFrom(story, csv)].sort((a, b) => compare(a.at, b.at))
  return { 'system.json': systemText, 'tests.csv': csv, 'log.json': json(log) }
}

/** The system of a story as the model takes it, and the entries of all that was done. */
export function lived(story: Story): Lived {
  const systemText = json(story.document)
  const read = readSystemFile(systemText)
  if (!read.ok) throw new Error(read.issues.map(({ where, got }) => `${where}: ${got}`).join('\n'))
  const { system, document } = read
  const description: Deed = {
    date: story.firstDate,
    kind: 'system',
    body: { tells: 'change', document, system },
  }
  return { systemText, system, done: entriesOf(story, [description, ...story.deeds]) }
}

export interface Lived {
  readonly systemText: string
  readonly system: System
  readonly done: readonly Entry[]
}

/** What was so on the dates of tests and surveys, given what was done. */
function truthBy(story: Story, done: readonly Entry[], system: System): (date: string) => Truth {
  const dates = [...new Set([...story.tests.dates, ...story.surveys.dates])].sort(compare)
  const asked = observationsAndEvents(received(entriesOf(story, dates.map(markerOn))), system.timeZone)
  const { events } = observationsAndEvents(received(done), system.timeZone)
  const days = asked.observations.map(({ day }) => day)
  const truths = truthOf(system, events, days[0], days, story.tank)
  const byDate = new Map(dates.map((date, i) => [date, truths[i]]))
  return (date) => {
    const truth = byDate.get(date)
    if (!truth) throw new Error(`Nobody looked on ${date}.`)
    return truth
  }
}

/** A reading that only asks at which day of the model's clock a date's readings are set. */
const markerOn = (date: string): Deed => ({
  date,
  kind: 'reading',
  body: { quantity: 'nitrate', value: 0, belowDetection: false, text: '' },
})

/** The readings as an import of the spreadsheet makes them, so that importing it again adds nothing. */
function readingsFrom({ document, lastDate }: Story, csv: string): readonly Entry[] {
  const sheet = readSheet(new TextEncoder().encode(csv), 'tests.csv')
  const waits = sheet.questions.filter(({ waiting }) => waiting > 0)
  const open = [...sheet.issues.map(({ got }) => got), ...waits.map(({ question }) => question)]
  if (open.length > 0) throw new Error(`tests.csv: ${open.join(' ')}`)
  const into = {
    workspace: 'home',
    system: document.id,
    timeZone: document.timeZone,
    by: 'keeper',
    device: 'example',
    madeAt: `${lastDate}T18:30:00Z`,
    batch: 'tests.csv',
  }
  return entriesFromSheet(sheet, into, []).entries
}

/** JSON as the formatter of the project leaves it: lists of words stand in one line. */
const json = (value: unknown): string =>
  `${JSON.stringify(value, null, 2).replace(/\[\n\s+("[^"[\]{}]*"(?:,\n\s+"[^"[\]{}]*")*)\n\s+\]/g, inOneLine)}\n`

const inOneLine = (_list: string, words: string): string => `[${words.replace(/,\n\s+/g, ', ')}]`
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
