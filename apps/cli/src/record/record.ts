import type { System } from '@holdfast/ecosystem'
import type { Appended, Entry, JournalLine, JournalPage, JournalQuestion } from '@holdfast/logbook'

/** The log as the commands write and list it, wherever it lives: in a folder or behind a server. */
export interface Record {
  /** Ids of the systems. */
  systems(): Promise<readonly string[]>
  /** The description of a system on a day, and the workspace that its entries name. */
  describedOn(system: string, day: string): Promise<Described>
  add(entries: readonly Entry[]): Promise<Appended>
  page(question: JournalQuestion): Promise<JournalPage>
  /** One entry with what became of it. @throws Refused where there is none */
  line(id: string): Promise<JournalLine>
}

export interface Described {
  readonly workspace: string
  readonly system: System
}
