import '../../style/facts.css'
import { assemble } from '@holdfast/ecosystem'
import { restsOn } from '@holdfast/inference'
import { type BodyOf, type EntryKind, type Moment, sayEntry } from '@holdfast/logbook'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { addressOf, fromAddress, intoAddress } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { type Act, LastAct } from '../log/last-act.tsx'
import type { Texts } from '../log/own-texts.ts'
import { keepStarted, nameOfStart } from '../log/started.ts'
import { whenOf } from '../log/when.ts'
import { entryOf, retractionOf } from '../log/writer.ts'
import { NotYet } from '../outbox/not-yet.tsx'
import type { Waiting } from '../outbox/outbox.ts'
import { outbox, useOutbox } from '../outbox/use-outbox.ts'
import { FactEntry } from './fact-entry.tsx'
import { familiesThere, found, type Wanted } from './found.ts'
import { useOwnFacts } from './use-own-facts.ts'

/** Facts shown at a time. */
const page = 25

/** The catalogue: every value the model rests on, where it comes from, and what the keeper says instead. */
export function Facts({ described }: { readonly described: Described }) {
  const { system } = described
  const outgoing = useOutbox()
  const { own, trouble, refresh } = useOwnFacts(system.id)
  const [wanted, setWanted] = useState<Wanted>(wantedInAddress)
  const [shown, setShown] = useState(page)
  const [last, setLast] = useState<Act | undefined>()
  const model = useMemo(() => assemble(system), [system])
  const count = outgoing.waiting.length
  const before = useRef(count)
  useEffect(() => {
    if (count < before.current) refresh()
    before.current = count
  }, [count, refresh])

  const write = (act: Act, typed: Texts = {}) => {
    outbox.put({ entry: act.entry, typed })
    setLast(act)
    void outgoing.sendNow()
  }
  const set = (body: BodyOf<EntryKind>, moment: Moment, typed: Texts) => {
    const entry = entryOf(described, { kind: 'fact-override', body: body as BodyOf<'fact-override'>, moment })
    write({ did: 'logged', entry, says: sayEntry(entry) }, typed)
  }
  const undo = ({ did, entry, says }: Act) =>
    write({
      did: did === 'taken back' ? 'brought back' : 'taken back',
      entry: retractionOf(described, 'entry', entry.id),
      says,
    })
  /** What the log refused is mended where everything is written down. */
  const mend = ({ entry, typed }: Waiting) => {
    keepStarted(nameOfStart(system.id, entry.kind), { typed, units: {}, when: whenOf(entry) })
    outbox.drop(entry.id)
    location.assign(addressOf('record', undefined, { kind: entry.kind }))
  }
  const want = (next: Partial<Wanted>) => {
    const whole = { ...wanted, ...next }
    intoAddress({
      words: whole.words || undefined,
      family: whole.family || undefined,
      order: whole.order === 'by family' ? undefined : whole.order,
    })
    setWanted(whole)
    setShown(page)
  }
  const those = found(wanted)
  return (
    <section class="view facts" aria-labelledby="facts-title">
      <h2 id="facts-title">Facts</h2>
      <p class="lead">
        Every value that the model rests on or is checked against: low, typical and high are what one tank in
        twenty lies below, the middle, and what one in twenty lies above. In the picture the typical value
        stands in the middle, and each mark is ten times the last.
      </p>
      <div class="blank search">
        <label for="facts-words">Search</label>
        <span class="typed">
          <input
            id="facts-words"
            type="search"
            autocomplete="off"
            value={wanted.words}
            onInput={(event) => want({ words: event.currentTarget.value })}
          />
        </span>
      </div>
      <div class="blank">
        <label for="facts-family">About</label>
        <select
          id="facts-family"
          value={wanted.family}
          onChange={(event) => want({ family: event.currentTarget.value })}
        >
          <option value="">Everything</option>
          {familiesThere.map((family) => (
            <option key={family} value={family}>
              {family}
            </option>
          ))}
        </select>
      </div>
      <div class="blank">
        <label for="facts-order">Order</label>
        <select
          id="facts-order"
          value={wanted.order}
          onChange={(event) => want({ order: event.currentTarget.value as Wanted['order'] })}
        >
          <option value="by family">By what it is about</option>
          <option value="least sure first">Least sure first</option>
        </select>
      </div>
      {trouble && (
        <p class="issue" role="alert">
          {trouble} What you set for this tank is not shown below.
        </p>
      )}
      <LastAct act={last} outgoing={outgoing} onUndo={undo} />
      <NotYet outgoing={outgoing} onMend={mend} onDrop={({ entry }) => outbox.drop(entry.id)} />
      <p class="quiet" role="status">
        {those.length === 0
          ? `No fact holds “${wanted.words.trim()}”.`
          : `${those.length} ${those.length === 1 ? 'fact' : 'facts'}`}
        {own && own.size > 0 ? `, ${own.size} set for this tank` : ''}
      </p>
      <ul class="fact-list">
        {those.slice(0, shown).map((fact) => (
          <FactEntry
            key={fact.id}
            fact={fact}
            own={own?.get(fact.id)}
            matters={restsOn(model, fact.id)}
            described={described}
            onSet={set}
          />
        ))}
      </ul>
      {those.length > shown && (
        <button type="button" class="key" onClick={() => setShown(shown + page)}>
          Show more
        </button>
      )}
    </section>
  )
}

function wantedInAddress(): Wanted {
  return {
    words: fromAddress('words') ?? '',
    family: fromAddress('family') ?? '',
    order: fromAddress('order') === 'least sure first' ? 'least sure first' : 'by family',
  }
}
