import { type FieldOf, hintOf } from './field.ts'

/** Words that may run over several lines. */
export function WordsField({ id, blank, text, issues, onText }: FieldOf) {
  const { label, required } = blank
  return (
    <div class="blank words">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={3}
        required={required}
        aria-describedby={hintOf(id)}
        aria-invalid={issues.length > 0}
        value={text}
        onInput={(event) => onText(event.currentTarget.value)}
      />
    </div>
  )
}
