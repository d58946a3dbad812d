import { type Issue, issueInWords } from '@holdfast/logbook'
import { useMemo } from 'preact/hooks'
import type { BlankAt } from './blank.ts'
import { blanksOf, paragraphsOf } from './blanks-of.ts'
import { confirmed, filled, read, unsaidOf, withMore, without } from './letter.ts'
import type { Letter } from './paragraph.ts'
import { ParagraphView } from './paragraph-view.tsx'
import { placeOf } from './path.ts'
import { SentenceView } from './sentence-view.tsx'
import type { Taught } from './taught.ts'

interface LetterFormOf {
  readonly letter: Letter
  readonly taught: Taught
  readonly onLetter: (letter: Letter) => void
}

const named: readonly BlankAt[] = [
  { path: ['name'], label: 'Name of the system', holds: 'words' },
  { path: ['timeZone'], label: 'Time zone of the system', holds: 'words' },
]

/** The letter from its greeting to its end. */
export function LetterForm({ letter, taught, onLetter }: LetterFormOf) {
  const issues = useMemo(() => issuesOf(letter), [letter])
  const places = useMemo(() => byPlace(issues, [...named, ...blanksOf(letter)]), [issues, letter])
  const unsaid = useMemo(() => new Set(unsaidOf(letter)), [letter])
  const shared = {
    letter,
    unsaid,
    issues: places,
    onText: (blank: BlankAt, text: string) => onLetter(filled(letter, blank, text)),
    onRight: (blanks: readonly BlankAt[]) => onLetter(confirmed(letter, blanks)),
  }
  const others = issues.filter(({ where }) => !places.has(where))
  const [name, zone] = named
  return (
    <>
      <ul class="letter-part">
        <SentenceView
          {...shared}
          sentence={{
            key: 'name',
            pieces: ['My system is called ', name, '; its days are those of ', zone, '.'].filter(isPiece),
          }}
          note={undefined}
          onRemove={() => undefined}
        />
      </ul>
      {paragraphsOf(letter).map((paragraph) => (
        <ParagraphView
          key={paragraph.title}
          paragraph={paragraph}
          taught={taught}
          onRemove={(sentence) => onLetter(without(letter, sentence))}
          onMore={(more) => onLetter(withMore(letter, more))}
          {...shared}
        />
      ))}
      {others.length > 0 && (
        <ul class="plain">
          {others.map((issue) => (
            <li class="issue" key={issue.where}>
              {issueInWords(issue)}
            </li>
          ))}
        </ul>
      )}
    </>
  )
}

const isPiece = (piece: string | BlankAt | undefined): piece is string | BlankAt => piece !== undefined

/** All that keeps the letter from being a system. */
export function issuesOf(letter: Letter): readonly Issue[] {
  const found = read(letter)
  return found.ok ? [] : found.issues
}

/** Issues of places that the letter has blanks for. The blank itself says where, so the sentence does not. */
function byPlace(issues: readonly Issue[], blanks: readonly BlankAt[]): ReadonlyMap<string, string> {
  const labels = new Map(blanks.map(({ path, label }) => [placeOf(path), label]))
  // Of several about one place the first is enough: the others follow from it.
  return new Map(
    issues.toReversed().flatMap((issue) => {
      const label = labels.get(issue.where)
      if (label === undefined) return []
      const { inWords, ...plain } = issue
      const told = inWords?.includes(':')
        ? `${label}:${inWords.slice(inWords.indexOf(':') + 1)}`
        : issueInWords({ ...plain, where: label, next: '' }).trim()
      return [[issue.where, told] as const]
    }),
  )
}
