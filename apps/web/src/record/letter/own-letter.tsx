import { type Entry, type EntryOf, sayEntry } from '@holdfast/logbook'
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { addressOf } from '../../shell/address.ts'
import { type Described, forgetDescribed, keepDescribed } from '../../shell/described.ts'
import { dayInShort } from '../../ways/dates.ts'
import { type Act, LastAct } from '../log/last-act.tsx'
import { today } from '../log/when.ts'
import { entryOf, retractionOf } from '../log/writer.ts'
import { NotYet } from '../outbox/not-yet.tsx'
import { outbox, useOutbox } from '../outbox/use-outbox.ts'
import { read } from './letter.ts'
import { issuesOf, LetterForm } from './letter-form.tsx'
import { asWritten, inOwnUnits } from './own-units.ts'
import type { Letter } from './paragraph.ts'
import { remember } from './put-away.ts'
import { fetchLetter, type StoredLetter } from './stored-letter.ts'
import { taughtBy } from './taught.ts'
import { UnsaidWords } from './unsaid-words.tsx'
import { type Tells, WhenItHolds } from './when-it-holds.tsx'

/** The page of a system: its letter as it holds today, with what the log has taught beside it. */
export function OwnLetter({ described }: { readonly described: Described }) {
  const { system } = described
  const now = today(system.timeZone, new Date())
  const [stored, setStored] = useState<StoredLetter | undefined>()
  /** As this keeper reads what is stored. */
  const [shown, setShown] = useState<Letter | undefined>()
  const [letter, setLetter] = useState<Letter | undefined>()
  const [tells, setTells] = useState<Tells>({ tells: 'change', from: now })
  const [last, setLast] = useState<Act | undefined>()
  const [trouble, setTrouble] = useState('')
  const outgoing = useOutbox()
  const refresh = useCallback(() => {
    fetchLetter(system.id, now).then(
      (found) => {
        setStored(found)
        setShown(found?.letter && inOwnUnits(found.letter))
        setTrouble('')
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [system.id, now])
  useEffect(refresh, [refresh])
  useEffect(() => setLetter(shown), [shown])
  const count = outgoing.waiting.length
  const before = useRef(count)
  useEffect(() => {
    if (count < before.current) refresh()
    before.current = count
  }, [count, refresh])
  const taught = useMemo(
    () => (stored && letter ? taughtBy(letter, stored.lines) : new Map<string, string>()),
    [stored, letter],
  )
  const write = (act: Act) => {
    outbox.put({ entry: act.entry, typed: {} })
    setLast(act)
    void outgoing.sendNow()
  }
  if (trouble || stored === undefined)
    return trouble ? (
      <p class="issue" role="alert">
        {trouble}
      </p>
    ) : null
  const { entry } = stored
  if (letter === undefined)
    return (
      <p class="lead">
        This system was not described by a letter.{' '}
        <a href={addressOf('record', 'letter', { new: 'yes' })}>Describe it anew from a starting point</a>
      </p>
    )
  const changed = letter !== shown
  const store = () => {
    const found = read(stored.letter ? asWritten(letter, stored.letter) : letter)
    if (!found.ok) return
    const next = newEntry(described, found, tells, entry)
    keepDescribed({ ...described, system: { ...found.system, id: system.id } })
    setTells({ tells: 'change', from: now })
    write({ did: tells.tells === 'mend' ? 'corrected' : 'logged', entry: next, says: sayEntry(next) })
  }
  const putAway = () => {
    const retractions = stored.descriptions.map(({ id }) => retractionOf(described, 'entry', id))
    for (const one of retractions) outbox.put({ entry: one, typed: {} })
    const { workspace } = described
    const { id, name, timeZone } = system
    remember({ workspace, id, name, timeZone, retractions: retractions.map((one) => one.id) })
    forgetDescribed(id)
    void outgoing.sendNow().then(() => location.assign(location.pathname))
  }
  return (
    <>
      <p class="lead">
        As it holds since {dayInShort(entry.at.slice(0, 10))}. With each sentence stands what the log has
        taught since.
      </p>
      <LetterForm letter={letter} taught={taught} onLetter={setLetter} />
      <UnsaidWords letter={letter} />
      {changed && (
        <section class="log-form" aria-label="Keep the changes">
          <WhenItHolds tells={tells} shown={entry.at.slice(0, 10)} onTells={setTells} />
          <p class="acts">
            <button
              type="button"
              class="large first"
              disabled={issuesOf(letter).length > 0 || tells.from === ''}
              onClick={store}
            >
              Keep the changes
            </button>
            <button type="button" class="key" onClick={() => setLetter(shown)}>
              Leave it as it was
            </button>
          </p>
        </section>
      )}
      <LastAct
        act={last}
        outgoing={outgoing}
        onUndo={({ did, entry: done, says }) =>
          write({
            did: did === 'taken back' ? 'brought back' : 'taken back',
            entry: retractionOf(described, 'entry', done.id),
            says,
          })
        }
      />
      <NotYet outgoing={outgoing} onMend={refresh} onDrop={(waiting) => outbox.drop(waiting.entry.id)} />
      <p class="acts">
        <a href={addressOf('record', 'letter', { new: 'yes' })}>Describe a new system</a>
        <button type="button" class="key" onClick={putAway}>
          Put this system away
        </button>
      </p>
      <p class="quiet">Its log stays when it is put away, and Today brings it back with one tap.</p>
    </>
  )
}

/** A change holds from its day; a mend takes the place of the letter that was wrong. */
function newEntry(
  described: Described,
  { system, document }: { readonly system: EntryOf<'system'>['body']['system']; readonly document: object },
  { tells, from }: Tells,
  entry: Entry,
): Entry {
  const { id } = described.system
  return entryOf(described, {
    kind: 'system',
    body: { tells, document: { ...document, id }, system: { ...system, id } },
    moment: tells === 'mend' ? { at: entry.at, precision: entry.precision } : { at: from, precision: 'day' },
    ...(tells === 'mend' ? { replaces: entry.id } : {}),
  })
}
