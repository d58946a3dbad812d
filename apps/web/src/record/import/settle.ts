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
    const given = open.flatMap(({ id }) => {
      const answer = wanted[id]
      return answer === undefined || answers[id] !== undefined ? [] : [[id, answer] as const]
    })
    if (given.length === 0) {
      const questions = [...known.values()].map((one) => withAnswer(one, open, answers))
      return { sheet: reader.sheet(answers), questions, answers }
    }
    answers = { ...answers, ...Object.fromEntries(given) }
  }
}

function withAnswer(question: SheetQuestion, open: readonly SheetQuestion[], answers: Answers): Question {
  const { [question.id]: answer } = answers
  // An answer that is none of the options leaves its question open.
  const still = open.find(({ id }) => id === question.id)
  return still ?? (answer === undefined ? question : { ...question, answer, waiting: 0 })
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
