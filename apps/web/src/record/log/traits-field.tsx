import { named } from '@holdfast/facts/names'
import { addressOf } from '../../shell/address.ts'
import { type FieldOf, hintOf } from './field.ts'

/** What was noted of a growth, in words: looks are chosen with the field key, and may be taken back here. */
export function TraitsField({ id, blank, text, onText }: FieldOf) {
  const noted = text.split(/[\s,;]+/).filter((part) => part !== '')
  const address = noted.map((part) => part.replace('=', '.')).join(',')
  return (
    <fieldset aria-describedby={hintOf(id)}>
      <legend>{blank.label}</legend>
      <ul class="noted">
        {noted.map((part) => {
          const [trait = '', state = ''] = part.split('=')
          return (
            <li key={part}>
              <span>
                <i>{named(trait)}</i> {named(state)}
              </span>
              <button
                type="button"
                class="key"
                aria-label={`Take back: ${named(trait)}`}
                onClick={() => onText(noted.filter((one) => one !== part).join(' '))}
              >
                Take back
              </button>
            </li>
          )
        })}
      </ul>
      <a id={id} href={addressOf('surfaces', 'identify', address === '' ? {} : { noted: address })}>
        {noted.length === 0 ? 'Say what you see, look by look' : 'Note more'}
      </a>
    </fieldset>
  )
}
