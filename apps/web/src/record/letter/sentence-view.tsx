import { useState } from 'preact/hooks'
import { type BlankAt, understood } from './blank.ts'
import { BlankInput } from './blank-input.tsx'
import { textAt } from './letter.ts'
import type { Letter, Sentence } from './paragraph.ts'
import { placeOf } from './path.ts'
import { Range } from './range.tsx'

interface SentenceViewOf {
  readonly sentence: Sentence
  readonly letter: Letter
  readonly unsaid: ReadonlySet<string>
  /** What is wrong, by the places of the document. */
  readonly issues: ReadonlyMap<string, string>
  /** What the log says about it. */
  readonly note: string | undefined
  readonly onText: (blank: BlankAt, text: string) => void
  readonly onRight: (blanks: readonly BlankAt[]) => void
  readonly onRemove: () => void
}

/** A sentence with its blanks; in the margin what the log has taught, and what can be done with it. */
export function SentenceView(of: SentenceViewOf) {
  const { sentence, letter, unsaid, issues, note, onText, onRight, onRemove } = of
  const [here, setHere] = useState<string | undefined>()
  const blanks = sentence.pieces.filter((piece): piece is BlankAt => typeof piece !== 'string')
  const open = blanks.filter(({ path }) => unsaid.has(placeOf(path)))
  const words = sentence.pieces
    .map((piece) => (typeof piece === 'string' ? piece : textAt(letter, piece)))
    .join('')
  return (
    <li class="letter-sentence">
      <div>
        <p class="letter-line">
          {sentence.pieces.map((piece, i) => {
            if (typeof piece === 'string') return piece
            const place = placeOf(piece.path)
            return (
              <BlankInput
                key={`${i} ${place}`}
                id={idOf(place)}
                blank={piece}
                text={textAt(letter, piece)}
                isUnsaid={unsaid.has(place)}
                isWrong={issues.has(place)}
                onText={(text) => onText(piece, text)}
                onHere={(isHere) => setHere(isHere ? place : undefined)}
              />
            )
          })}
        </p>
        {blanks.map((blank) => (
          <Beneath
            key={placeOf(blank.path)}
            blank={blank}
            text={textAt(letter, blank)}
            isHere={here === placeOf(blank.path)}
            issue={issues.get(placeOf(blank.path))}
            onText={(text) => onText(blank, text)}
          />
        ))}
      </div>
      <div class="letter-margin">
        {note && <p>{note}</p>}
        {open.length > 0 && (
          <button type="button" class="key" aria-label={`So it is: ${words}`} onClick={() => onRight(open)}>
            So it is
          </button>
        )}
        {sentence.removes && (
          <button
            type="button"
            class="key"
            aria-label={`${sentence.removes.words}: ${words}`}
            onClick={onRemove}
          >
            {sentence.removes.words}
          </button>
        )}
      </div>
    </li>
  )
}

/** Ids hold no spaces. */
const idOf = (place: string): string => `letter-${place.replaceAll(/[^\w]+/g, '-')}`

interface BeneathOf {
  readonly blank: BlankAt
  readonly text: string
  readonly isHere: boolean
  readonly issue: string | undefined
  readonly onText: (text: string) => void
}

/** What a blank comes to, asks, or cannot take; the range while one is at it. */
function Beneath({ blank: { path, holds }, text, isHere, issue, onText }: BeneathOf) {
  const measure = typeof holds === 'string' || 'length' in holds ? undefined : holds
  const read = measure && understood(text, measure)
  const id = `${idOf(placeOf(path))}-says`
  return (
    <div class="letter-beneath" id={id}>
      {read?.asks && (
        <div class="question" role="group" aria-label={read.asks.question}>
          <p>{read.asks.question}</p>
          <div class="units">
            {read.asks.options.map(({ answer, means }) => (
              <button key={answer} type="button" class="large" onClick={() => onText(answer)}>
                {answer} <span class="quiet">{means}</span>
              </button>
            ))}
          </div>
        </div>
      )}
      {issue && !read?.asks && <p class="issue">{issue}</p>}
      {isHere && measure && read && (
        <p class="quiet">
          {read.means && <>which is {read.means}; </>}
          <Range holds={measure} value={read.value} />
        </p>
      )}
    </div>
  )
}
