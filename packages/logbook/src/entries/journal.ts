import { sayEntry } from './draft-entry.ts'
import type { Stored } from './entry.ts'
import { fatesOf } from './fate.ts'
import { kindNamed } from './index.ts'
import { inOrderOfReceipt } from './standing.ts'

/** An entry with what became of it, for a list that hides nothing. */
export interface JournalLine {
  readonly entry: Stored
  readonly state: 'holds' | 'corrected' | 'taken back'
  /** Id of the entry that corrected it or took it back. */
  readonly by?: string
  /** Other entries that say something else of the same; of these the later received holds. */
  readonly rivals: readonly string[]
  readonly says: string
}

const none: readonly string[] = []

/**
 * Every entry but retractions, the latest day first, of a day the latest time and then the later received.
 *
 * @param stored  the entries of one system in the order of receipt
 */
export function journal(stored: readonly Stored[]): readonly JournalLine[] {
  const received = inOrderOfReceipt(stored)
  const { corrected, takenBack, rivals } = fatesOf(received)
  const holds = ({ id }: Stored): boolean => !corrected.has(id) && !takenBack.has(id)
  const rivalsOf = new Map<string, readonly string[]>()
  for (const group of [...rivals.values(), ...contradictions(received.filter(holds))])
    for (const id of group)
      rivalsOf.set(id, [...(rivalsOf.get(id) ?? []), ...group.filter((other) => other !== id)])
  const lines: JournalLine[] = []
  for (let place = received.length - 1; place >= 0; place--) {
    const entry = received[place]
    if (entry.kind === 'retraction') continue
    const by = takenBack.get(entry.id) ?? corrected.get(entry.id)
    const state = takenBack.has(entry.id) ? 'taken back' : by === undefined ? 'holds' : 'corrected'
    const [others, says] = [rivalsOf.get(entry.id) ?? none, sayEntry(entry)]
    lines.push(
      by === undefined ? { entry, state, rivals: others, says } : { entry, state, by, rivals: others, says },
    )
  }
  return lines.sort((a, b) => (a.entry.at > b.entry.at ? -1 : a.entry.at < b.entry.at ? 1 : 0))
}

/** Groups of entries that settle the same at one moment, such as two rations of one day. */
function contradictions(holding: readonly Stored[]): readonly (readonly string[])[] {
  const groups = new Map<string, string[]>()
  for (const { id, kind, at, body } of holding) {
    const settled = kindNamed(kind).settles(body)
    if (settled === undefined) continue
    const key = JSON.stringify([kind, at, settled])
    const known = groups.get(key)
    if (known === undefined) groups.set(key, [id])
    else known.push(id)
  }
  return [...groups.values()].filter((group) => group.length > 1)
}
