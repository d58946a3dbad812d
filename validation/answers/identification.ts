/** What the field key says of the growth that the log tells of. */
import {
  type Answers,
  type Identification,
  identify,
  issueInWords,
  readAnswers,
} from '@holdfast/identification'
import type { CaseFile } from '../case-file.ts'
import { CannotAnswer, type Family } from './answer.ts'
import { doubtfulReading } from './doubtful-reading.ts'
import { readingsOf } from './readings.ts'

/** What experts call a look at a trait; what an eye sees a photo shows, and others are called by the trait. */
const looks: Readonly<Record<string, string>> = {
  cells_microscope: 'microscope',
  cell_shape: 'microscope',
  thread_shape: 'microscope',
  branching: 'lens',
  thread_diameter: 'lens',
  night_retreat: 'night_look',
  siphon_behaviour: 'siphon_test',
  spread_speed: 'photo_survey',
  nutrient_readings: 'nitrate',
}

/** Looks that go by two names. */
const looksAlso: Readonly<Record<string, readonly string[]>> = { nutrient_readings: ['phosphate'] }

/** Other words for a kind. */
const kindsAlso: Readonly<Record<string, readonly string[]>> = {
  cyano: ['cyanobacteria'],
  dino: ['dinoflagellates'],
  hair_green: ['hair algae'],
  film_green: ['film'],
  film_diatom: ['film', 'diatoms'],
}

export const identificationAnswers: Family = {
  identify_kind: {
    unit: 'words',
    answer: ({ file }) => {
      const [{ key }] = identified(file).chances
      return { value: key, alsoCalled: kindsAlso[key] ?? [] }
    },
  },
  ask_next: {
    unit: 'words',
    answer: ({ file }) => {
      if (notedIn(file) === undefined) return { value: testToTake(file) }
      const { next } = identified(file)
      if (next === undefined) return { value: 'none' }
      return {
        value: looks[next.key] ?? (next.tool === 'eye' ? 'photo_survey' : next.key),
        alsoCalled: [next.key, ...(looksAlso[next.key] ?? [])],
      }
    },
  },
}

/** Where nobody has looked at a growth: what to measure, the first of what is in doubt or not known. */
function testToTake(file: CaseFile): string {
  if (doubtfulReading(file) !== undefined) return 'second_kit'
  const unread = (['nitrate', 'phosphate'] as const).find((of) => readingsOf(file, of).length === 0)
  if (unread !== undefined) return unread
  const { kind, NO3_mg_L, PO4_mg_L } = file.system.source_water
  const isKnown = kind === 'RO/DI' || (NO3_mg_L !== undefined && PO4_mg_L !== undefined)
  return isKnown ? 'none' : 'source_water'
}

/** Of all that was noted up to the day on which one looks; a later note of a trait holds. */
function identified(file: CaseFile): Identification {
  const answers = notedIn(file)
  if (answers === undefined) throw new CannotAnswer('needs an observation in the log')
  return identify(answers)
}

/** What was noted of a growth, trait by trait; undefined where nothing was. @throws CannotAnswer if it cannot be read */
export function notedIn({ log, asof }: CaseFile): Answers | undefined {
  const noted = log.events
    .filter(({ kind, date }) => kind === 'observation' && date <= asof)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  if (noted.length === 0) return undefined
  const read = readAnswers(Object.assign({}, ...noted.map(({ traits }) => traits)))
  if (!read.ok) throw new CannotAnswer(read.issues.map(issueInWords).join(' '))
  return read.answers
}
