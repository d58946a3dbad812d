import type { EntryOf, Stored } from '../entries/entry.ts'
import type { ReadQuantity } from '../entries/reading.ts'
import { standing } from '../entries/standing.ts'

/** How a value of the sheet stands in the log. */
export interface Found {
  /** The id it has, or gets. */
  readonly id: string
  readonly state: 'new' | 'already' | 'taken back'
  /** The entry that stands for it now: itself, or the keeper's own correction of it. */
  readonly standsAs: string
}

/** What earlier imports left in the log, and which of it the sheet at hand no longer says. */
export class ImportedBefore {
  readonly #stored: ReadonlyMap<string, Stored>
  readonly #standing: ReadonlyMap<string, Stored>
  readonly #takenBackSingly: ReadonlySet<string>
  readonly #claimed = new Set<string>()

  constructor(stored: readonly Stored[]) {
    this.#stored = new Map(stored.map((entry) => [entry.id, entry]))
    const stand = standing(stored)
    this.#standing = new Map(stand.map((entry) => [entry.id, entry]))
    const singly = stored
      .filter((entry) => entry.kind === 'retraction')
      .filter(({ body }) => body.of === 'entry')
    this.#takenBackSingly = new Set(singly.map(({ body }) => body.id))
  }

  /**
   * Finds the value in the log by its id. A value that stood before, was mended away and has come back,
   * or whose whole import was undone, is new again under the next id; one that the keeper corrected by
   * hand counts as there, and one that the keeper took back by itself stays out.
   */
  find(idAgain: (again: number) => string): Found {
    for (let again = 0; ; again++) {
      const id = idAgain(again)
      if (!this.#stored.has(id)) return { id, state: 'new', standsAs: id }
      if (this.#standing.has(id)) return { id, state: 'already', standsAs: id }
      const heir = [...this.#standing.values()].find((entry) => this.#descends(entry, id))
      if (heir !== undefined && heir.batch === undefined) return { id, state: 'already', standsAs: heir.id }
      if (this.#takenBackSingly.has(id)) return { id, state: 'taken back', standsAs: id }
    }
  }

  /** Sets apart what the sheet still says: it is not mended. */
  claim(ids: readonly string[]): void {
    for (const id of ids) this.#claimed.add(id)
  }

  /** The reading of an earlier import on that day that the sheet no longer says; each is given once. */
  mendedBy(system: string, date: string, quantity: ReadQuantity): EntryOf<'reading'> | undefined {
    for (const entry of this.#standing.values()) {
      if (entry.kind !== 'reading' || entry.batch === undefined || this.#claimed.has(entry.id)) continue
      if (entry.system !== system || entry.body.quantity !== quantity || entry.at.slice(0, 10) !== date)
        continue
      this.#claimed.add(entry.id)
      return entry
    }
    return undefined
  }

  #descends(entry: Stored, id: string): boolean {
    const seen = new Set<string>()
    for (
      let next = entry.replaces;
      next !== undefined && !seen.has(next);
      next = this.#stored.get(next)?.replaces
    ) {
      if (next === id) return true
      seen.add(next)
    }
    return false
  }
}
