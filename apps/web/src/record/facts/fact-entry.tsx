import { type Fact, familyOf, howKnown, referencesOf } from '@holdfast/facts'
import type { BodyOf, EntryKind, Moment, OwnFact } from '@holdfast/logbook'
import { useEffect, useRef, useState } from 'preact/hooks'
import { addressOf } from '../../shell/address.ts'
import type { Described } from '../../shell/described.ts'
import { LogForm } from '../log/form.tsx'
import type { Texts } from '../log/own-texts.ts'
import { nameOfStart } from '../log/started.ts'
import { Band } from './band.tsx'
import { rangeInWords } from './in-words.ts'

interface FactEntryOf {
  readonly fact: Fact
  readonly own: OwnFact | undefined
  /** Whether what is reckoned for this tank rests on it. */
  readonly matters: boolean
  readonly described: Described
  readonly onSet: (body: BodyOf<EntryKind>, moment: Moment, typed: Texts) => void
}

/** A fact: what it is, its numbers, where they come from, and what the keeper says instead. */
export function FactEntry({ fact, own, matters, described, onSet }: FactEntryOf) {
  const [setting, setSetting] = useState(false)
  const opener = useRef<HTMLButtonElement>(null)
  const wasOpen = useRef(false)
  // Form and button take each other's place: the keyboard goes along.
  useEffect(() => {
    if (setting) document.getElementById(`set-${fact.id}-low`)?.focus()
    else if (wasOpen.current) opener.current?.focus()
    wasOpen.current = setting
  }, [setting, fact.id])
  const { id, title, unit, holds, aside } = fact
  const numbers = own ?? fact
  const titleId = `fact-${id}`
  return (
    <li class="fact">
      <div class="fact-head">
        <h3 id={titleId}>{title}</h3>
        <p class="quiet">
          {familyOf(id)} · <span class="number">{id}</span>
        </p>
      </div>
      <div class="fact-numbers">
        <Band {...numbers} />
        <p>{rangeInWords(numbers, numbers === fact ? unit : (own?.unit ?? unit))}</p>
      </div>
      {own && (
        <p class="fact-own">
          Set for this tank: {own.reason}
          {own.source === undefined ? '' : ` (${own.source})`}. The catalogue says {rangeInWords(fact, unit)}.{' '}
          <a href={addressOf('record', undefined, { words: id })}>Find it in the log to undo it</a>
        </p>
      )}
      <p>{howKnown(fact)}</p>
      <details aria-labelledby={titleId}>
        <summary>Source and conditions</summary>
        <p>Holds for: {holds}.</p>
        <ul class="references">
          {referencesOf(fact).map(({ text, doi }) => (
            <li key={text}>
              {text}{' '}
              {doi !== undefined && (
                <a href={`https://doi.org/${doi}`} rel="noreferrer">
                  doi:{doi}
                </a>
              )}
            </li>
          ))}
        </ul>
        {aside === undefined && (
          <p>
            {matters
              ? 'What is reckoned for this tank rests on it.'
              : 'Nothing that is reckoned for this tank rests on it: a value of your own is kept and moves nothing yet.'}
          </p>
        )}
      </details>
      {aside !== undefined ? (
        <p class="quiet">No formula reads it: {aside}.</p>
      ) : setting ? (
        <LogForm
          kind="fact-override"
          system={described.system}
          name={nameOfStart(described.system.id, `fact-override.${id}`)}
          prefix={`set-${id}`}
          title={`${title}, for this tank`}
          act="Set it"
          start={{
            typed: {
              fact: id,
              low: String(numbers.low),
              typical: String(numbers.typical),
              high: String(numbers.high),
              unit: own?.unit ?? unit,
            },
            units: {},
            when: 'now',
          }}
          onLeave={() => setSetting(false)}
          onLog={(body, moment, typed) => {
            setSetting(false)
            onSet(body, moment, typed)
          }}
        />
      ) : (
        <button
          ref={opener}
          type="button"
          class="key"
          aria-describedby={titleId}
          onClick={() => setSetting(true)}
        >
          Set for this tank
        </button>
      )}
    </li>
  )
}
