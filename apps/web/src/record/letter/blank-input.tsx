import { useState } from 'preact/hooks'
import type { BlankAt } from './blank.ts'

interface BlankInputOf {
  readonly id: string
  readonly blank: BlankAt
  /** What stands in the letter. */
  readonly text: string
  /** Nobody said it: it stands as the letter began. */
  readonly isUnsaid: boolean
  readonly isWrong: boolean
  readonly onText: (text: string) => void
  /** The keeper is at it, or left it. */
  readonly onHere: (isHere: boolean) => void
}

/** A blank within a sentence: as wide as what stands in it. */
export function BlankInput({ id, blank, text, isUnsaid, isWrong, onText, onHere }: BlankInputOf) {
  /** What is typed keeps its letters until the blank is left. */
  const [typing, setTyping] = useState<string | undefined>()
  const shown = typing ?? text
  const given = {
    id,
    class: isUnsaid ? 'letter-blank unsaid' : 'letter-blank',
    'aria-label': isUnsaid ? `${blank.label}, not said yet` : blank.label,
    'aria-invalid': isWrong,
    'aria-describedby': `${id}-says`,
    onFocus: () => onHere(true),
  }
  if (typeof blank.holds !== 'string' && 'length' in blank.holds) {
    const isKnown = blank.holds.some(({ value }) => value === text)
    return (
      <select
        {...given}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
        onBlur={() => onHere(false)}
      >
        {!isKnown && <option value={text}>{text}</option>}
        {blank.holds.map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    )
  }
  return (
    <input
      {...given}
      type="text"
      autocomplete="off"
      spellcheck={false}
      inputMode={blank.holds === 'count' ? 'numeric' : 'text'}
      size={Math.max(2, shown.length)}
      value={shown}
      onInput={(event) => {
        setTyping(event.currentTarget.value)
        onText(event.currentTarget.value)
      }}
      onBlur={() => {
        setTyping(undefined)
        onHere(false)
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter') onText(event.currentTarget.value)
      }}
    />
  )
}
