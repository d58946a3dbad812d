import type { Answers, Sheet, SheetQuestion } from '@holdfast/logbook'

/** A sheet read with the answers that it asks for. */
export interface SettledSheet {
  readonly sheet: Sheet
  /** Every question in the order in which it came up, answered or open. */
  readonly questions: readonly Question[]
  /** The answers to what was asked. */
  readonly answers: Answers
}

/** A question, with its answer where it has one. */
export interface Question extends SheetQuestion {
  readonly answer?: string
}

/**
 * Reads a sheet with answers as they are asked for: an answer may bring up another question, and one to
 * nothing that is asked is not taken.
 */
export function settle(reader: SheetReader, wanted: Answers): SettledSheet {
  const known = new Map<string, SheetQuestion>()
  let answers: Answers = {}
  for (;;) {
    const open = reader.questions(answers)
    for (const question of open) if (!known.has(question.id)) known.set(question.id, question)
    const given = open.flatMap((question) => {
      const { [question.id]: answer } = wanted
      if (answer === undefined || answers[question.id] !== undefined) return []
      return isAnswer(question, answer) ? [[question.id, answer] as const] : []
    })
    if (given.length === 0) {
      const questions = [...known.values()].flatMap((one) => answered(one, open, answers))
      return { sheet: reader.sheet(answers), questions, answers }
    }
    answers = { ...answers, ...Object.fromEntries(given) }
  }
}

/** The options, or any figure above 0 where there are none. */
const isAnswer = ({ options }: SheetQuestion, answer: string): boolean =>
  options.length === 0 ? Number(answer.replace(',', '.')) > 0 : options.includes(answer)

/**
 * With its answer, or as it is still asked; nothing where other answers settled it. An answer that does not
 * settle all of its cells leaves the question open for them.
 */
function answered(
  question: SheetQuestion,
  open: readonly SheetQuestion[],
  answers: Answers,
): readonly Question[] {
  const { [question.id]: answer } = answers
  const now = open.find(({ id }) => id === question.id)
  if (answer !== undefined) return [{ ...question, waiting: 0, ...now, answer }]
  return now === undefined ? [] : [now]
}

/** Reads one sheet again and again; of each reading it keeps what was asked, and of the last one all. */
export class SheetReader {
  readonly #read: (answers: Answers) => Sheet
  readonly #questions = new Map<string, readonly SheetQuestion[]>()
  #last: { readonly key: string; readonly sheet: Sheet } | undefined

  constructor(read: (answers: Answers) => Sheet) {
    this.#read = read
  }

  sheet(answers: Answers): Sheet {
    const key = keyOf(answers)
    if (this.#last?.key !== key) this.#last = { key, sheet: this.#read(answers) }
    this.#questions.set(key, this.#last.sheet.questions)
    return this.#last.sheet
  }

  questions(answers: Answers): readonly SheetQuestion[] {
    return this.#questions.get(keyOf(answers)) ?? this.sheet(answers).questions
  }
}

const keyOf = (answers: Answers): string => JSON.stringify(Object.entries(answers).toSorted())
