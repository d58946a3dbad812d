import { issueInWords } from '@holdfast/logbook'
import { useEffect, useRef } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import { counted } from '../../ways/counts.ts'
import { MendedCells, Notes, Odd } from './cells.tsx'
import { freshInWords } from './in-words.ts'
import type { Preview } from './protocol.ts'
import { Questions } from './questions.tsx'
import { openOf, Store } from './store.tsx'
import { Understood } from './understood.tsx'
import type { Import } from './use-import.ts'

interface WalkOf {
  readonly walk: Import
  readonly preview: Preview
}

/** From what was understood to storing it, on one page. */
export function Walk({ walk, preview }: WalkOf) {
  const { settled = preview.settled, issues = [], working } = walk
  const head = useRef<HTMLHeadingElement>(null)
  const sentence = inShort(preview)
  useEffect(() => head.current?.focus(), [])
  // A browser would leave the page for a file that is let go on it, and the answers with it.
  useEffect(() => {
    const stay = (event: DragEvent) => event.preventDefault()
    document.addEventListener('dragover', stay)
    document.addEventListener('drop', stay)
    return () => {
      document.removeEventListener('dragover', stay)
      document.removeEventListener('drop', stay)
    }
  }, [])
  useEffect(() => {
    if (working === undefined) speak(sentence)
  }, [sentence, working])
  const [open] = openOf(preview)
  return (
    <section class="view" aria-labelledby="walk-title" aria-busy={working !== undefined}>
      <h2 id="walk-title" ref={head} tabIndex={-1}>
        {preview.fileName}
      </h2>
      <p class="line-of-counts">{sentence}</p>
      <p class="acts">
        <a href={`#${open ?? 'store'}`}>{open ? 'To what is asked' : 'To the end'}</a>
        <button type="button" class="key" onClick={walk.leave}>
          Another sheet
        </button>
      </p>
      <Understood preview={preview} />
      <Questions preview={preview} settled={settled} onSettle={walk.settle} />
      <Odd preview={preview} settled={settled} onSettle={walk.settle} />
      <Notes preview={preview} />
      <MendedCells preview={preview} />
      {issues.length > 0 && (
        <p class="issue" role="alert">
          {issues.map(issueInWords).join(' ')}{' '}
          <button type="button" class="key" onClick={walk.again}>
            Try again
          </button>
        </p>
      )}
      <Store walk={walk} preview={preview} />
    </section>
  )
}

function inShort(preview: Preview): string {
  const count = preview.series.reduce((sum, one) => sum + one.count, 0)
  const understood = [
    counted(count, 'reading'),
    ...(preview.notes.all > 0 ? [counted(preview.notes.all, 'note')] : []),
  ]
  const open = openOf(preview).length
  const asks =
    open > 0
      ? `${counted(open, 'question needs', 'questions need')} an answer.`
      : freshInWords(preview.fresh) === ''
        ? 'nothing of it is new.'
        : 'nothing more needs an answer.'
  return `${understood.join(' and ')} understood; ${asks}`.replace(/^./, (letter) => letter.toUpperCase())
}
