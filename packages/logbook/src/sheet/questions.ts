import type { Answers, QuestionTopic, SheetQuestion } from './sheet.ts'

/** What a question is about: the key of its answer, and the words for its place. */
export interface Asked {
  readonly key: string
  readonly where: string
}

/** What is asked of which cells: its place, its options, and the one that is likely. */
type About = readonly [
  asked: Asked,
  topic: QuestionTopic,
  question: string,
  options: readonly string[],
  cells: readonly string[],
  likely?: string,
]

/** As many as remind the keeper of what is meant. */
const mostWritten = 4

/** Gathers what a sheet leaves open: one question a topic and key, with the cells that it is about. */
export class Questions {
  readonly #answers: Answers
  readonly #asked = new Map<
    string,
    {
      readonly question: Omit<SheetQuestion, 'cells' | 'written' | 'waiting'>
      readonly must: boolean
      readonly cells: Set<string>
    }
  >()

  constructor(answers: Answers) {
    this.#answers = answers
  }

  /** The answer to a question, without asking it. */
  answer(topic: QuestionTopic, key: string): string | undefined {
    return this.#answers[`${topic}:${key}`]
  }

  /**
   * Asks something on which cells wait, unless it was answered.
   *
   * @param options  empty where any figure is an answer
   * @returns the answer, where it is one of the options
   */
  choose(...about: About): string | undefined {
    return this.#answered(true, ...about)
  }

  /** As `choose`, where the cells are taken as they are until it is answered. */
  offer(...about: About): string | undefined {
    return this.#answered(false, ...about)
  }

  /** @param textOf  what stands in a cell */
  asked(textOf: (cell: string) => string): readonly SheetQuestion[] {
    return [...this.#asked.values()].map(({ question, must, cells }) => ({
      ...question,
      cells: [...cells],
      written: [...cells].slice(0, mostWritten).map(textOf),
      waiting: must ? cells.size : 0,
    }))
  }

  /** @param must  true where the cells wait for the answer */
  #answered(
    must: boolean,
    ...[{ key, where }, topic, question, options, cells, likely]: About
  ): string | undefined {
    const id = `${topic}:${key}`
    const answer = this.#answers[id]
    if (answer !== undefined && (options.length === 0 ? isFigure(answer) : options.includes(answer)))
      return answer
    this.#ask({ id, topic, where, question, options, ...(likely !== undefined && { likely }) }, cells, must)
    return undefined
  }

  #ask(
    question: Omit<SheetQuestion, 'cells' | 'written' | 'waiting'>,
    cells: readonly string[],
    must: boolean,
  ): void {
    const known = this.#asked.get(question.id)
    if (known === undefined) this.#asked.set(question.id, { question, must, cells: new Set(cells) })
    else for (const cell of cells) known.cells.add(cell)
  }
}

const isFigure = (answer: string): boolean => Number(answer.replace(',', '.')) > 0
