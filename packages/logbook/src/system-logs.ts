import type { Logbook } from './logbook.ts'
import { type SystemLog, systemLog } from './system-log.ts'

/** What the model takes of a log; the entries themselves stay in the store. */
export type LogOfModel = Omit<SystemLog, 'entries'>

/**
 * Systems with their logs, put together once and kept until an entry comes: in a log of 100,000 entries
 * that takes seconds, and the page of the water, the page of surfaces and a reload ask for the same.
 *
 * What is kept cannot be stale: each question first asks the store for its last receipt, which counts what
 * other programs wrote too.
 */
export class SystemLogs {
  readonly #logbook: Logbook
  readonly #kept = new Map<string, { readonly received: number; readonly log: LogOfModel }>()

  constructor(logbook: Logbook) {
    this.#logbook = logbook
  }

  /** @returns undefined where no entry that stands describes the system */
  async of(system: string): Promise<LogOfModel | undefined> {
    const received = await this.#logbook.received()
    const before = this.#kept.get(system)
    if (before?.received === received) return before.log
    const whole = systemLog(await this.#logbook.read({ system }))
    if (whole === undefined) return undefined
    const { entries: _entries, ...log } = whole
    // Where an entry came meanwhile, what was read may hold it or not: it is used and not kept.
    if ((await this.#logbook.received()) === received) this.#kept.set(system, { received, log })
    return log
  }
}
