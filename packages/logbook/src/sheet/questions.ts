import type { Missing } from './measure.ts'
import type { Answers, SheetQuestion } from './sheet.ts'
import type { WrittenCell } from './written-cells.ts'

/** Gathers what a sheet leaves open, one question a topic and column, with the cells that wait for it. */
export class Questions {
  readonly #answers: Answers
  readonly #asked = new Map<string, SheetQuestion>()

  constructor(answers: Answers) {
    this.#answers = answers
  }

  /** The answers that bear on a cell, by topic. */
  answersFor({ key }: WrittenCell): Answers {
    const own = Object.entries(this.#answers).filter(([id]) => id.slice(id.indexOf(':') + 1) === key)
    return Object.fromEntries(own.map(([id, answer]) => [id.slice(0, id.indexOf(':')), answer]))
  }

  /** Asks what is missing, unless it was answered; each asking is one cell that waits. */
  ask(cell: WrittenCell, missing: readonly Missing[]): void {
    for (const one of missing) {
      if (one.options.includes(this.answersFor(cell)[one.topic])) continue
      this.#add(cell, one, 1)
    }
  }

  /** The limit that the keeper gave for cells that say only "not detected", in the unit of the column. */
  limit(cell: WrittenCell): number | undefined {
    const answer = Number((this.answersFor(cell).limit ?? '').replace(',', '.'))
    if (answer > 0) return answer
    const question = `"${cell.text}" means not detected: below which value, in the unit of the column?`
    this.#add(cell, { topic: 'limit', question, options: [] }, 0)
    return undefined
  }

  asked(): readonly SheetQuestion[] {
    return [...this.#asked.values()]
  }

  #add({ key, where }: WrittenCell, missing: Missing, waiting: number): void {
    const id = `${missing.topic}:${key}`
    const before = this.#asked.get(id)?.waiting ?? 0
    this.#asked.set(id, { id, where, ...missing, waiting: before + waiting })
  }
}
