import { useState } from 'preact/hooks'

interface QuestionOf {
  /** Of the element, for links to it. */
  readonly id: string
  readonly words: string
  /** What it concerns and what waits for it. */
  readonly about: string
  readonly isOpen: boolean
  readonly children: preact.ComponentChildren
}

/** A question with its answers below; one that must be answered has a mark at its side, and says so. */
export function Question({ id, words, about, isOpen, children }: QuestionOf) {
  return (
    <fieldset class={isOpen ? 'asked open' : 'asked'} id={id} aria-describedby={`${id}-about`} tabIndex={-1}>
      <legend>{words}</legend>
      <p class="quiet" id={`${id}-about`}>
        {about}
      </p>
      {children}
    </fieldset>
  )
}

interface OptionsOf {
  readonly options: readonly { readonly value: string; readonly words: string }[]
  readonly chosen: string | undefined
  readonly onChoose: (value: string) => void
}

/** The answers to choose from, all in sight. */
export function Options({ options, chosen, onChoose }: OptionsOf) {
  return (
    <div class="answers">
      {options.map(({ value, words }) => (
        <button
          key={value}
          type="button"
          class="large"
          aria-pressed={value === chosen}
          onClick={() => value !== chosen && onChoose(value)}
        >
          {words}
        </button>
      ))}
    </div>
  )
}

interface FigureOf {
  readonly id: string
  readonly chosen: string | undefined
  readonly onChoose: (value: string) => void
}

/** Any figure above 0 is an answer. */
export function FigureAnswer({ id, chosen, onChoose }: FigureOf) {
  const [text, setText] = useState(chosen ?? '')
  const isFigure = Number(text.replace(',', '.')) > 0
  const [isWrong, setWrong] = useState(false)
  return (
    <form
      class="answers"
      onSubmit={(event) => {
        event.preventDefault()
        setWrong(!isFigure)
        if (isFigure) onChoose(text)
      }}
    >
      <span class="typed">
        <label class="spoken" for={id}>
          A number above 0
        </label>
        <input
          id={id}
          inputMode="decimal"
          autocomplete="off"
          aria-invalid={isWrong}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </span>
      <button type="submit" class="large" aria-pressed={chosen !== undefined && chosen === text}>
        {chosen !== undefined && chosen === text ? `Taken: ${chosen}` : 'Take this number'}
      </button>
      {isWrong && (
        <span class="issue" role="alert">
          A number above 0, such as 0.02.
        </span>
      )}
    </form>
  )
}
