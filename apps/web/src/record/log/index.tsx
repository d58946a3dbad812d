import type { BodyOf, Entry, EntryKind, JournalLine, Moment } from '@holdfast/logbook'
import { useEffect, useRef, useState } from 'preact/hooks'
import { fromAddress, intoAddress } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { fetchHolding, fetchSystems } from '../../shell/system-data.ts'
import { JournalView } from '../journal/index.tsx'
import { useJournal } from '../journal/use-journal.ts'
import { inOtherSystems } from '../journal/whole-import.ts'
import { NotYet } from '../outbox/not-yet.tsx'
import type { Waiting } from '../outbox/outbox.ts'
import { outbox, useOutbox } from '../outbox/use-outbox.ts'
import { said, saidOf } from '../said.ts'
import { LogForm } from './form.tsx'
import { Kinds, kindsByUse } from './kinds.tsx'
import { titleOf } from './kinds-to-write.ts'
import { type Act, LastAct } from './last-act.tsx'
import type { Texts } from './own-texts.ts'
import { PictureForm } from './picture-form.tsx'
import { keepStarted, nameOfStart } from './started.ts'
import { whenOf } from './when.ts'
import { entryOf, retractionOf } from './writer.ts'

/** Write down what happened, and see what was written down. */
export function Log({ described }: { readonly described: Described }) {
  const { system } = described
  const outgoing = useOutbox()
  const [words, setWords] = useState(() => fromAddress('words') ?? '')
  const journal = useJournal(system.id, words)
  const [last, setLast] = useState<Act | undefined>()
  const [trouble, setTrouble] = useState('')
  const [kind, setKind] = useState<EntryKind>(kindInAddress)
  /** A form that was filled from elsewhere begins anew. */
  const [fresh, setFresh] = useState(0)

  const write = (act: Act, typed: Texts = {}) => {
    outbox.put({ entry: act.entry, typed })
    setLast(act)
    void outgoing.sendNow()
  }
  const logged = (body: BodyOf<EntryKind>, moment: Moment, typed?: Texts) => {
    const entry = entryOf(described, { kind, body, moment })
    write({ did: 'logged', entry, says: saidOf(entry) }, typed)
  }
  const takeBack = (did: Act['did'], id: string, says: string) =>
    write({ did, entry: retractionOf(described, 'entry', id), says })
  /** Here at once, and then wherever else the import is. */
  const actOnImport = (did: 'taken back' | 'brought back', entry: Entry, batch: string, says: string) => {
    setTrouble('')
    write({ did, entry, says })
    inOtherSystems(described, batch, did, { systems: fetchSystems, lines: fetchHolding }).then(
      (elsewhere) => {
        for (const one of elsewhere) outbox.put({ entry: one, typed: {} })
        setLast({ did, entry, elsewhere, says })
        void outgoing.sendNow()
      },
      (error: unknown) =>
        setTrouble(
          `${error instanceof Error ? error.message : error} Where ${says} told of other tanks, do the same there.`,
        ),
    )
  }
  const choose = (next: EntryKind) => {
    intoAddress({ kind: next })
    setKind(next)
  }
  // The list is that of the log, so it is asked anew when the log has taken something.
  const count = outgoing.waiting.length
  const before = useRef(count)
  useEffect(() => {
    if (count < before.current) journal.refresh()
    before.current = count
  }, [count, journal.refresh])

  const mend = ({ entry, typed }: Waiting) => {
    keepStarted(nameOfStart(system.id, entry.kind), { typed, units: {}, when: whenOf(entry) })
    outbox.drop(entry.id)
    choose(entry.kind)
    setFresh(fresh + 1)
  }
  return (
    <div class="record">
      <section class="view log" aria-labelledby="log-title">
        <h2 id="log-title">What happened?</h2>
        <Kinds chosen={kind} onChoose={choose} />
        {kind === 'attachment' ? (
          <PictureForm system={system} title={titleOf(kind)} onLog={logged} />
        ) : (
          <LogForm
            key={`${kind} ${fresh}`}
            kind={kind}
            system={system}
            name={nameOfStart(system.id, kind)}
            prefix="log"
            title={titleOf(kind)}
            act="Log it"
            start={{ typed: {}, units: {}, when: 'now' }}
            onLog={logged}
          />
        )}
        <LastAct
          act={last}
          outgoing={outgoing}
          onUndo={({ did, entry, elsewhere = [], says }) => {
            for (const { id, system: there } of elsewhere) {
              const inSystem = { ...described, system: { ...system, id: there } }
              outbox.put({ entry: retractionOf(inSystem, 'entry', id), typed: {} })
            }
            takeBack(did === 'taken back' ? 'brought back' : 'taken back', entry.id, says)
          }}
        />
        {trouble && (
          <p class="issue" role="alert">
            {trouble}
          </p>
        )}
        <NotYet outgoing={outgoing} onMend={mend} onDrop={({ entry }) => outbox.drop(entry.id)} />
      </section>
      <JournalView
        described={described}
        journal={journal}
        words={words}
        onWords={(next) => {
          intoAddress({ words: next === '' ? undefined : next })
          setWords(next)
        }}
        acts={{
          correct: (line: JournalLine, entry: Entry, typed: Texts) =>
            write({ did: 'corrected', entry, says: `${said(line)} to ${saidOf(entry)}` }, typed),
          undo: (id, says) => takeBack('taken back', id, says),
          bringBack: (retraction, says) => takeBack('brought back', retraction, says),
          undoImport: (batch, says) =>
            actOnImport('taken back', retractionOf(described, 'batch', batch), batch, says),
          bringImportBack: (batch, retraction, says) =>
            actOnImport('brought back', retractionOf(described, 'entry', retraction), batch, says),
        }}
      />
    </div>
  )
}

function kindInAddress(): EntryKind {
  const named = fromAddress('kind')
  const kinds = kindsByUse()
  return kinds.find((kind) => kind === named) ?? kinds[0] ?? 'reading'
}
