import type { BlankAt } from './blank.ts'
import type { Letter, More, Paragraph, Sentence } from './paragraph.ts'
import { SentenceView } from './sentence-view.tsx'
import type { Taught } from './taught.ts'

interface ParagraphViewOf {
  readonly paragraph: Paragraph
  readonly letter: Letter
  readonly unsaid: ReadonlySet<string>
  readonly issues: ReadonlyMap<string, string>
  readonly taught: Taught
  readonly onText: (blank: BlankAt, text: string) => void
  readonly onRight: (blanks: readonly BlankAt[]) => void
  readonly onRemove: (sentence: Sentence) => void
  readonly onMore: (more: More) => void
}

/** A paragraph: its sentences, and what can be said besides. */
export function ParagraphView({ paragraph, taught, onRemove, onMore, ...of }: ParagraphViewOf) {
  const id = `letter-part-${paragraph.title.toLowerCase().replaceAll(' ', '-')}`
  return (
    <section class="letter-part" aria-labelledby={id}>
      <h3 id={id}>{paragraph.title}</h3>
      <ul>
        {paragraph.sentences.map((sentence) => (
          <SentenceView
            key={sentence.key}
            sentence={sentence}
            note={taught.get(sentence.key)}
            onRemove={() => onRemove(sentence)}
            {...of}
          />
        ))}
      </ul>
      {paragraph.more.length > 0 && (
        <p class="letter-more">
          <span>There is also</span>
          {paragraph.more.map((more) => (
            <button key={more.words} type="button" class="key" onClick={() => onMore(more)}>
              {more.words}
            </button>
          ))}
        </p>
      )}
    </section>
  )
}
