import { named } from '@holdfast/facts/names'
import { blanksOf, type Entry, type EntryKind, type JournalLine, typedOf } from '@holdfast/logbook'
import { useEffect, useId, useRef, useState } from 'preact/hooks'
import { addressOf } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { momentInWords } from '../../ways/dates.ts'
import { meaning, meaningInList } from '../meaning.ts'
import { said } from '../said.ts'
import type { Acts } from './acts.ts'
import { Attached } from './attached.tsx'
import { Correction } from './correction.tsx'
import { fateInWords } from './fate.ts'

interface LineOf {
  readonly line: JournalLine
  readonly lines: readonly JournalLine[]
  readonly described: Described
  readonly acts: Acts
  /** The one that was asked for stands open. */
  readonly isAsked?: boolean
}

/** One entry as a sentence; a tap or Enter opens beneath it what was typed, and what can be done with it. */
export function LineOfJournal({ line, lines, described, acts, isAsked = false }: LineOf) {
  const [open, setOpen] = useState(isAsked)
  const id = useId()
  const [correcting, setCorrecting] = useState(false)
  const { entry, state, by } = line
  const words = said(line)
  const head = useRef<HTMLButtonElement>(null)
  /** What is pressed goes away with its work: the line itself takes the focus. */
  const and = (act: () => void) => () => {
    head.current?.focus()
    act()
  }
  useEffect(() => {
    if (isAsked) head.current?.focus()
  }, [isAsked])
  const byHand = blanksOf(entry.kind).length > 0
  const inList = meaningInList(entry)
  const means = meaning(entry)
  const fate = fateInWords(line, lines)
  return (
    <li class={state === 'holds' ? 'log-line' : 'log-line past'}>
      <button
        type="button"
        class="log-says"
        ref={head}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        {entry.precision === 'minute' && <span class="number">{entry.at.slice(11, 16)} </span>}
        <span class={state === 'holds' ? undefined : 'struck'}>{words}</span>
        {inList && <span class="quiet"> is {inList}</span>}
      </button>
      {fate && (
        <p class="fate">
          {fate}
          {state === 'taken back' && by !== undefined && (
            <button type="button" class="key" onClick={and(() => acts.bringBack(by, words))}>
              Bring it back
            </button>
          )}
        </p>
      )}
      {open && (
        <div class="derivation" id={id}>
          {entry.kind === 'attachment' && <Attached of={entry.body} />}
          <dl>
            {typedInWords(entry).map(([label, text]) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{text}</dd>
              </div>
            ))}
            {means && (
              <div>
                <dt>Which is</dt>
                <dd>{means}</dd>
              </div>
            )}
            <div>
              <dt>Written down</dt>
              <dd>
                {momentInWords(entry.madeAt, described.system.timeZone)}, by {entry.by}, {entry.device}
              </dd>
            </div>
          </dl>
          <p class="acts">
            {byHand && state === 'holds' && !correcting && (
              <button type="button" class="key" onClick={() => setCorrecting(true)}>
                Correct
              </button>
            )}
            {(byHand || entry.kind === 'attachment') && state !== 'taken back' && (
              <button type="button" class="key" onClick={and(() => acts.undo(entry.id, words))}>
                Undo
              </button>
            )}
            {state === 'holds' && !silent.includes(entry.kind) && (
              <a href={addressOf('water', undefined, { rests: entry.id })}>What rests on it</a>
            )}
          </p>
          {correcting && (
            <Correction
              entry={entry}
              described={described}
              onLeave={and(() => setCorrecting(false))}
              onCorrect={(correction, typed) => {
                and(() => setCorrecting(false))()
                acts.correct(line, correction, typed)
              }}
            />
          )}
        </div>
      )}
    </li>
  )
}

/** A note or a picture says nothing to the model, and on what describes the system everything rests. */
const silent: readonly EntryKind[] = [
  'note',
  'attachment',
  'system',
  'fact-override',
  'shown-outlook',
  'crew-plan',
]

/** What was typed, by the labels of the blanks; algae by what they are called. */
function typedInWords(entry: Entry): readonly (readonly [label: string, text: string])[] {
  const typed = typedOf(entry)
  return blanksOf(entry.kind, {}, typed).flatMap(({ name, label, choices = [] }) => {
    const text = typed[name]
    if (!text) return []
    const asName = name === 'algae' ? named(text) : text
    return [[label, choices.find(({ value }) => value === text)?.words ?? asName] as const]
  })
}
