import { named } from '@holdfast/facts/names'
import { type FieldOf, hintOf } from './field.ts'

interface ChoiceFieldOf extends FieldOf {
  /** A finger or a mouse chose: the next field may take the focus. Arrow keys only walk. */
  readonly onPicked: () => void
}

/** As many choices as are read at a glance. */
const atAGlance = 12

/** One of several: all in sight where they are few, else a list. */
export function ChoiceField(props: ChoiceFieldOf) {
  const { id, blank, text, issues, onText, onPicked } = props
  const { label, required, choices = [] } = blank
  if (choices.length > atAGlance) return <ListField {...props} />
  const offered = required ? choices : [{ value: '', words: 'not said' }, ...choices]
  return (
    <fieldset class="choice" aria-describedby={hintOf(id)} aria-invalid={issues.length > 0}>
      <legend>{label}</legend>
      <div class="options">
        {offered.map(({ value, words }, i) => (
          <label key={value}>
            <input
              type="radio"
              id={i === 0 ? id : undefined}
              name={id}
              checked={text === value}
              onChange={(event) => {
                // A focus that is shown came by the keyboard, which only walks through the choices.
                const walks = event.currentTarget.matches(':focus-visible')
                onText(value)
                if (!walks) onPicked()
              }}
            />
            <span>{named(words)}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

function ListField({ id, blank, text, issues, onText }: ChoiceFieldOf) {
  const { label, required, choices = [] } = blank
  return (
    <div class="blank">
      <label for={id}>{label}</label>
      <select
        id={id}
        required={required}
        aria-describedby={hintOf(id)}
        aria-invalid={issues.length > 0}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
      >
        <option value="">{required ? 'choose' : 'not said'}</option>
        {choices.map(({ value, words }) => (
          <option key={value} value={value}>
            {named(words)}
          </option>
        ))}
      </select>
    </div>
  )
}
