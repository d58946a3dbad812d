import { useState } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import { isSame, type Settings, type Today } from '../settings.ts'
import { type Variant, without, withVariant } from './kept.ts'
import { settingWords } from './words.ts'

export interface VariantsOf {
  readonly today: Today
  readonly set: Settings
  readonly isMoved: boolean
  readonly variants: readonly Variant[]
  readonly onChange: (variants: readonly Variant[]) => void
  /** Puts the levers where a variant has them. */
  readonly onSet: (set: Settings) => void
}

interface Done {
  readonly says: string
  readonly before: readonly Variant[]
}

/** Variants by name: kept from the levers as they stand, set again, removed, and the last of it undone. */
export function Variants({ today, set, isMoved, variants, onChange, onSet }: VariantsOf) {
  const [name, setName] = useState('')
  const [issue, setIssue] = useState('')
  const [done, setDone] = useState<Done | undefined>()
  const change = (next: readonly Variant[], says: string) => {
    onChange(next)
    setDone({ says, before: variants })
    setIssue('')
    speak(says)
  }
  const keep = () => {
    const next = withVariant(variants, name, set)
    if ('issue' in next) return setIssue(next.issue)
    setName('')
    change(next.variants, `Kept: ${name.trim()}.`)
  }
  return (
    <section class="variants" aria-labelledby="variants-title">
      <h4 id="variants-title">Variants</h4>
      {isMoved ? (
        <form
          onSubmit={(event) => {
            event.preventDefault()
            keep()
          }}
        >
          <label for="variant-name">Keep the levers as they stand, by the name</label>
          <span class="typed words">
            <input
              id="variant-name"
              type="text"
              autocomplete="off"
              maxLength={40}
              value={name}
              aria-invalid={issue !== ''}
              aria-describedby={issue ? 'variant-issue' : undefined}
              onInput={(event) => setName(event.currentTarget.value)}
            />
          </span>
          <button type="submit" class="key">
            Keep it
          </button>
        </form>
      ) : (
        variants.length === 0 && (
          <p class="quiet">Move a lever, and you can keep where it stands by a name.</p>
        )
      )}
      {issue && (
        <p class="issue" id="variant-issue" role="alert">
          {issue}
        </p>
      )}
      {done && (
        <p class="last-act">
          <span>{done.says}</span>
          <button
            type="button"
            class="key"
            onClick={() => {
              onChange(done.before)
              setDone(undefined)
              speak('Undone.')
            }}
          >
            Undo
          </button>
        </p>
      )}
      <ul class="variant-list">
        {variants.map((variant) => (
          <li key={variant.mark}>
            <svg class={`mark-line outline-${variant.mark}`} width="44" height="12" aria-hidden="true">
              <path class="outline-median" d="M0,6h44" />
            </svg>
            <span>
              {variant.mark}: {variant.name}
              <span class="quiet">{settingWords(variant.set, today)}</span>
            </span>
            <span class="variant-acts">
              <button
                type="button"
                class="key"
                disabled={isSame(variant.set, set)}
                aria-label={`Set the levers as in ${variant.name}`}
                onClick={() => onSet(variant.set)}
              >
                Set
              </button>
              <button
                type="button"
                class="key"
                aria-label={`Remove ${variant.name}`}
                onClick={() => change(without(variants, variant.mark), `Removed: ${variant.name}.`)}
              >
                Remove
              </button>
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
