import { type Entry, type EntryKind, typedOf } from '@holdfast/logbook'
import type { Described } from '../../shell/described.ts'
import { LogForm } from '../log/form.tsx'
import type { Texts } from '../log/own-texts.ts'
import { nameOfStart } from '../log/started.ts'
import { whenOf } from '../log/when.ts'
import { entryOf } from '../log/writer.ts'

interface CorrectionOf {
  readonly entry: Entry
  readonly described: Described
  readonly onCorrect: (correction: Entry, typed: Texts) => void
  readonly onLeave: () => void
}

/** The form in which an entry was written, filled as it was; what is mended is a new entry in its place. */
export function Correction({ entry, described, onCorrect, onLeave }: CorrectionOf) {
  const kind: EntryKind = entry.kind
  const { unit, ...typed } = typedOf(entry)
  return (
    <LogForm
      kind={kind}
      system={described.system}
      name={nameOfStart(described.system.id, entry.id)}
      prefix={`correct-${entry.id}`}
      title="Correct this entry"
      act="Correct it"
      start={{ typed, units: unit === undefined ? {} : { value: unit }, when: whenOf(entry) }}
      onLeave={onLeave}
      moment={entry}
      onLog={(body, moment, texts) =>
        onCorrect(entryOf(described, { kind, body, moment, replaces: entry.id }), texts)
      }
    />
  )
}
