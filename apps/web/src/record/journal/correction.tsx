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
      onLog={(body, moment, texts) => {
        const was = whenOf(entry)
        const is = whenOf(moment)
        const same = was !== 'now' && is !== 'now' && was.date === is.date && was.time === is.time
        // What was not touched keeps its offset: an autumn night has one hour twice.
        const { at, precision } = same ? entry : moment
        onCorrect(entryOf(described, { kind, body, moment: { at, precision }, replaces: entry.id }), texts)
      }}
    />
  )
}
