import { fieldKey, posterior } from '@holdfast/identification'
import { askedThrough } from './key/asked-through.ts'
import { reliability, type Sureness } from './key/reliability.ts'
import { readVignettes, type Vignette } from './key/vignette-file.ts'

/** Every vignette weighed: a line each, the reliability, the questions it takes, then the counts. */
export interface KeyChecked {
  readonly lines: readonly string[]
  readonly passed: number
  readonly failed: number
  /** 1 if fewer than nine in ten stand first, or one does not stand in the first three, or the file is wrong. */
  readonly exitCode: 0 | 1
}

const firstShare = 0.9
const inThree = 3

/** @param text a CSV with the columns id, description, traits (JSON), expected_kind */
export function checkKey(text: string): KeyChecked {
  const { vignettes, wrongRows, wrongFile } = readVignettes(text)
  if (wrongFile.length > 0)
    return { lines: [...wrongFile, '0 passed, 0 failed'], passed: 0, failed: 0, exitCode: 1 }
  const placed = vignettes.map(place)
  const passed = placed.filter(({ rank }) => rank === 1).length
  const failed = placed.length - passed + wrongRows.length
  const total = passed + failed
  const within = placed.filter(({ rank }) => rank <= inThree).length
  return {
    lines: [
      ...wrongRows,
      ...placed.map(inWords),
      '',
      ...tableOf(reliability(placed.map(({ said, rank }) => ({ said, was: rank === 1 })))),
      '',
      ...(placed.length > 0 ? [...questionsOf(vignettes), ''] : []),
      `First: ${percent(passed, total)}; in the first three: ${percent(within, total)}.`,
      `${passed} passed, ${failed} failed`,
    ],
    passed,
    failed,
    exitCode: passed < firstShare * total || within < total ? 1 : 0,
  }
}

interface Placed extends Vignette {
  /** Of the true kind. */
  readonly rank: number
  readonly chance: number
  /** Of the kind that stands first. */
  readonly said: number
  readonly first: string
}

function place(vignette: Vignette): Placed {
  const chances = posterior(fieldKey, vignette.answers)
  const at = chances.findIndex(({ key }) => key === vignette.kind)
  return {
    ...vignette,
    rank: at + 1,
    chance: chances[at].chance,
    said: chances[0].chance,
    first: chances[0].key,
  }
}

const inWords = ({ id, kind, rank, chance, said, first }: Placed): string =>
  rank === 1
    ? `${id}: ${kind}, rank 1, ${chance.toFixed(3)}`
    : `MISS ${id}: ${kind}, rank ${rank}, ${chance.toFixed(3)}; first ${first}, ${said.toFixed(3)}`

const tableOf = (rows: readonly Sureness[]): readonly string[] => [
  'Said to be      many   said  was so  error (2 s.e.)',
  ...rows.map(
    ({ from, to, many, said, was, error, within }) =>
      `${from.toFixed(2)} to ${to.toFixed(2)}  ${String(many).padStart(6)}  ${said.toFixed(3)}   ${was.toFixed(3)}  ${error.toFixed(3)}  ${within ? 'within' : 'OUTSIDE'}`,
  ),
]

/** How long a keeper is asked who answers from the vignette, and whether the end is right. */
function questionsOf(vignettes: readonly Vignette[]): readonly string[] {
  const asked = vignettes.map((one) => ({ one, through: askedThrough(one.answers) }))
  const right = asked.filter(({ one, through }) => through.end.best.response.kinds.includes(one.kind)).length
  const agreed = asked.filter(({ through }) => through.end.ends === 'agreed').length
  return [
    `Questions to an end: ${median(asked.map(({ through }) => through.answered))} answered, ${median(asked.map(({ through }) => through.put))} put (medians).`,
    `The measures agreed in ${agreed} of ${asked.length}; what is proposed at the end is right in ${right}.`,
  ]
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2
}

const percent = (part: number, whole: number): string =>
  `${part} of ${whole} (${(whole === 0 ? 0 : (100 * part) / whole).toFixed(1)} %)`
