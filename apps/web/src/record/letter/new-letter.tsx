import { outcome } from '@holdfast/client'
import { composeEntry, type Entry, sayEntry } from '@holdfast/logbook'
import { useEffect, useState } from 'preact/hooks'
import { addressOf } from '../../shell/address.ts'
import { api, told } from '../../shell/api.ts'
import { forget, keep, kept } from '../../shell/browser-store.ts'
import { keepDescribed } from '../../shell/described.ts'
import { speak } from '../../shell/spoken.ts'
import { fetchSystems } from '../../shell/system-data.ts'
import { today } from '../log/when.ts'
import { writer } from '../log/writer.ts'
import { NotYet } from '../outbox/not-yet.tsx'
import { outbox, useOutbox } from '../outbox/use-outbox.ts'
import { AfterLetter } from './after-letter.tsx'
import { ChooseStart } from './choose-start.tsx'
import { begun, read } from './letter.ts'
import { issuesOf, LetterForm } from './letter-form.tsx'
import type { Letter } from './paragraph.ts'
import { UnsaidWords } from './unsaid-words.tsx'
import { FromDay } from './when-it-holds.tsx'

const draft = 'holdfast.letter.new'
const zoneHere = Intl.DateTimeFormat().resolvedOptions().timeZone

/** A system that the log does not have yet, from a starting point to its first letter. */
export function NewLetter() {
  const [letter, setLetter] = useState<Letter | undefined>(() => draftKept())
  const [from, setFrom] = useState(() => today(zoneHere, new Date()))
  const [log, setLog] = useState<{ readonly workspace: string; readonly kept: string } | undefined>()
  const [taken, setTaken] = useState<readonly string[]>([])
  const [trouble, setTrouble] = useState('')
  const [done, setDone] = useState<string | undefined>()
  const outgoing = useOutbox()
  useEffect(() => {
    Promise.all([outcome(api.GET('/api/health')).then(told), fetchSystems()]).then(
      ([health, systems]) => {
        setLog(health)
        setTaken(systems.map(({ id }) => id))
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [])
  const write = (next: Letter) => {
    keep(draft, next)
    setLetter(next)
  }
  if (done !== undefined) {
    return (
      <>
        <NotYet
          outgoing={outgoing}
          onMend={() => setDone(undefined)}
          onDrop={({ entry }) => outbox.drop(entry.id)}
        />
        <AfterLetter system={done} />
      </>
    )
  }
  if (letter === undefined) return <ChooseStart onStart={(start) => write(begun(start, zoneHere))} />
  const store = () => {
    const found = read(letter)
    if (!found.ok || log === undefined) return
    const { document } = found
    const system = { ...found.system, id: freeId(found.system.id, taken) }
    const entry = composeEntry(
      {
        workspace: log.workspace,
        system: system.id,
        kind: 'system',
        at: from,
        precision: 'day',
        body: { tells: 'change', document: { ...document, id: system.id }, system },
        ...writer,
      },
      new Date(),
    ) as Entry
    outbox.put({ entry, typed: {} })
    keepDescribed({ workspace: log.workspace, kept: log.kept, system })
    void outgoing.sendNow().then(() => speak(`Logged: ${sayEntry(entry)}`))
    forget(draft)
    setDone(system.id)
  }
  const wrong = issuesOf(letter).length
  return (
    <>
      <p class="lead">
        Correct what differs in yours and pass by the rest: it counts as unknown. The letter may be{' '}
        <a href="#keep-letter">kept</a> as soon as you like, and corrected on any day.
      </p>
      <LetterForm letter={letter} taught={new Map()} onLetter={write} />
      <FromDay from={from} onFrom={setFrom} />
      <UnsaidWords letter={letter} />
      {trouble && (
        <p class="issue" role="alert">
          {trouble}
        </p>
      )}
      <p class="acts" id="keep-letter">
        <button
          type="button"
          class="large first"
          disabled={wrong > 0 || log === undefined || from === ''}
          onClick={store}
        >
          Keep this letter
        </button>
        <button
          type="button"
          class="key"
          onClick={() => {
            forget(draft)
            setLetter(undefined)
          }}
        >
          Begin from another point
        </button>
        <a href={addressOf('today')}>Leave it for now</a>
      </p>
      {wrong > 0 && (
        <p class="issue">{wrong === 1 ? 'One blank' : `${wrong} blanks`} above cannot be read yet.</p>
      )}
    </>
  )
}

function draftKept(): Letter | undefined {
  const found = kept(draft)
  const isOne = typeof found === 'object' && found !== null && 'vessels' in found && 'name' in found
  return isOne ? (found as Letter) : undefined
}

/** Two systems of one name are two. */
function freeId(id: string, taken: readonly string[]): string {
  let free = id
  for (let count = 2; taken.includes(free); count++) free = `${id}-${count}`
  return free
}
