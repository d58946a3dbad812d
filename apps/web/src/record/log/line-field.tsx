import { useState } from 'preact/hooks'
import { hasOwnUnit } from '../own-unit.ts'
import { type FieldOf, hintOf } from './field.ts'

interface LineFieldOf extends FieldOf {
  readonly units: readonly string[]
  readonly unit: string
  readonly onUnit: (unit: string) => void
}

/** One line that is typed: a figure, with its unit beside it as long as none is typed, or a few words. */
export function LineField({ id, blank, text, issues, onText, units, unit, onUnit }: LineFieldOf) {
  const { label, holds, required, choices = [], limits = false } = blank
  const [letters, setLetters] = useState(false)
  const isFigure = limits || !['words', 'choice', 'date'].includes(holds)
  const [only, ...more] = units
  const toField = () => document.getElementById(id)?.focus()
  return (
    <div class="blank">
      <label for={id}>
        {label}
        {!required && <span class="quiet"> (if you like)</span>}
      </label>
      <span class={isFigure ? 'typed figure-typed' : 'typed words-typed'}>
        <input
          id={id}
          type={holds === 'date' ? 'date' : 'text'}
          inputMode={isFigure && !letters ? (holds === 'count' ? 'numeric' : 'decimal') : 'text'}
          autocomplete="off"
          autocapitalize="off"
          required={required}
          list={choices.length > 0 ? `${id}-choices` : undefined}
          aria-describedby={hintOf(id)}
          aria-invalid={issues.length > 0}
          value={text}
          onInput={(event) => onText(event.currentTarget.value)}
        />
        {only !== undefined && more.length === 0 && !hasOwnUnit(text) && <span class="quiet"> {only}</span>}
        {more.length > 0 && !hasOwnUnit(text) && (
          <select
            aria-label={`Unit of ${label.toLowerCase()}`}
            value={unit}
            onChange={(event) => onUnit(event.currentTarget.value)}
          >
            <option value="">unit?</option>
            {units.map((each) => (
              <option key={each} value={each}>
                {each}
              </option>
            ))}
          </select>
        )}
      </span>
      {isFigure && (
        <span class="figure-keys">
          {limits && (
            <button
              type="button"
              class="key"
              aria-pressed={text.startsWith('<')}
              onClick={() => {
                onText(text.startsWith('<') ? text.slice(1) : `<${text.replace(/^[<>]/, '')}`)
                toField()
              }}
            >
              below this
            </button>
          )}
          <button
            type="button"
            class="key for-touch"
            aria-pressed={letters}
            onClick={() => {
              setLetters(!letters)
              toField()
            }}
          >
            letters
          </button>
        </span>
      )}
      {choices.length > 0 && (
        <datalist id={`${id}-choices`}>
          {choices.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </datalist>
      )}
    </div>
  )
}
