import type { Blank, BlankQuestion } from '@holdfast/logbook'
import { ChoiceField } from './choice-field.tsx'
import { type FieldOf, hintOf } from './field.ts'
import { LineField } from './line-field.tsx'
import { TraitsField } from './traits-field.tsx'
import { WordsField } from './words-field.tsx'

interface BlankFieldOf extends FieldOf {
  readonly units: readonly string[]
  readonly unit: string
  readonly questions: readonly BlankQuestion[]
  /** The figure has no unit, and one must be said. */
  readonly asksUnit: boolean
  readonly onUnit: (unit: string) => void
  readonly onPicked: () => void
  readonly onAnswer: (text: string) => void
  /** The unit is said, and will be remembered. */
  readonly onUnitSaid: (unit: string) => void
}

/** A blank with its field, its hint, what is wrong with it and what is asked about it. */
export function BlankField({ questions, asksUnit, onAnswer, onUnitSaid, ...field }: BlankFieldOf) {
  const { id, blank, text, units } = field
  const issues = asksUnit ? [] : field.issues
  return (
    <div class="blank-field">
      <Field {...field} />
      <p class={issues.length > 0 ? 'issue' : 'quiet hint'} id={hintOf(id)}>
        {issues.length > 0 ? issues.join(' ') : asksUnit ? '' : hintFor(blank)}
      </p>
      {asksUnit && (
        <div class="question" role="group" aria-label={`Unit of ${blank.label.toLowerCase()}`}>
          <p>
            {blank.label}: {text.trim()} of which unit? It is remembered for the next time.
          </p>
          <div class="units">
            {units.map((unit) => (
              <button key={unit} type="button" class="large" onClick={() => onUnitSaid(unit)}>
                {unit}
              </button>
            ))}
          </div>
        </div>
      )}
      {questions.map(({ question, options }) => (
        <div class="question" key={question}>
          <p>{question}</p>
          <ul class="choices">
            {options.map(({ value, words }) => (
              <li key={value}>
                <button type="button" class="large" onClick={() => onAnswer(value)}>
                  {value} <span class="quiet">{words}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  )
}

/** Of choices that are all in sight, and of looks that are chosen elsewhere, an example says nothing more. */
const hintFor = ({ name, holds, hint }: Blank): string =>
  name === 'traits' || (holds === 'choice' && hint.startsWith('Such as')) ? '' : hint

type Fields = Omit<BlankFieldOf, 'questions' | 'asksUnit' | 'onAnswer' | 'onUnitSaid'>

function Field({ units, unit, onUnit, onPicked, ...field }: Fields) {
  const { name, holds, open = false } = field.blank
  if (holds === 'choice' && !open) return <ChoiceField {...field} onPicked={onPicked} />
  if (name === 'traits') return <TraitsField {...field} />
  if (name === 'text') return <WordsField {...field} />
  return <LineField {...field} units={units} unit={unit} onUnit={onUnit} />
}
