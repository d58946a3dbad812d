import { type Entry, issueInWords } from '@holdfast/logbook'
import { meaning } from '../meaning.ts'
import { saidOf } from '../said.ts'
import { BlankField } from './blank-field.tsx'
import { type FormOf, useForm } from './use-form.ts'
import { WhenField } from './when-field.tsx'

interface LogFormOf extends FormOf {
  /** The name of the form, and what the button does. */
  readonly title: string
  readonly act: string
  readonly onLeave?: () => void
}

/** The form of a kind, made of its blanks: what must be filled in, when it was, and what may be added. */
export function LogForm({ title, act, onLeave, ...of }: LogFormOf) {
  const form = useForm(of)
  const { blanks, filled, trouble, body } = form
  const isAtHand = (blank: (typeof blanks)[number]) =>
    blank.required || (of.start.typed[blank.name] ?? '') !== '' || form.isRemembered(blank)
  const fields = (shown: typeof blanks) =>
    shown.map((blank) => (
      <BlankField
        key={blank.name}
        id={form.idOf(blank.name)}
        blank={blank}
        text={filled.typed[blank.name] ?? ''}
        issues={form.issuesOf(blank)}
        units={form.unitsOf(blank)}
        unit={form.unitOf(blank)}
        questions={trouble.questions.filter((question) => question.blank === blank.name)}
        asksUnit={form.asksUnit(blank)}
        onUnitSaid={(unit) => form.sayUnit(blank.name, unit)}
        onText={(text) => form.type(blank.name, text)}
        onUnit={(unit) => form.choose(blank.name, unit)}
        onPicked={() => {
          const next = blanks[blanks.indexOf(blank) + 1]
          if (next) document.getElementById(form.idOf(next.name))?.focus()
        }}
        onAnswer={(text) => form.answer(blank.name, text)}
      />
    ))
  const labels = new Set(blanks.map(({ label }) => label))
  const others = trouble.issues.filter(({ where }) => !labels.has(where))
  const more = blanks.filter((blank) => !isAtHand(blank))
  return (
    <form
      class="log-form"
      aria-label={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        form.log()
      }}
    >
      {fields(blanks.filter(isAtHand))}
      <WhenField
        id={form.idOf('when')}
        when={filled.when}
        timeZone={of.system.timeZone}
        onWhen={form.set}
        read={form.momentRead}
        onAnswer={form.sayWhen}
      />
      {more.length > 0 && (
        <details open={more.some(({ name }) => (filled.typed[name] ?? '') !== '')}>
          <summary>{more.map(({ label }, at) => (at === 0 ? label : small(label))).join(', ')}</summary>
          {fields(more)}
        </details>
      )}
      {others.length > 0 && <p class="issue">{others.map(issueInWords).join(' ')}</p>}
      <p class="reads">{body ? reads({ kind: of.kind, body } as Entry) : ''}</p>
      <p class="acts">
        <button type="submit" class="large">
          {act}
        </button>
        {onLeave && (
          <button type="button" class="key" onClick={onLeave}>
            Leave it as it was
          </button>
        )}
      </p>
    </form>
  )
}

/** How what is typed will stand in the log. */
function reads(entry: Entry): string {
  const means = meaning(entry)
  return `Reads: ${saidOf(entry)}${means === undefined ? '' : `, which is ${means}`}`
}

/** A label further on in a line; `pH` stays as it is. */
const small = (label: string): string => label.replace(/^[A-Z](?=[a-z])/, (first) => first.toLowerCase())
