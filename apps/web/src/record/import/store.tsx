import { issueInWords } from '@holdfast/logbook'
import { counted, countText } from '../../ways/counts.ts'
import { capital, freshInWords, mustAnswer } from './in-words.ts'
import type { Preview } from './protocol.ts'
import { idOfQuestion } from './questions.tsx'
import type { Import } from './use-import.ts'

/** The last step: how much is new, and storing it. */
export function Store({ walk, preview }: { readonly walk: Import; readonly preview: Preview }) {
  const { sending, working, issues = [], store } = walk
  const { already, takenBack, mended, fresh } = preview
  const words = freshInWords(fresh)
  const open = openOf(preview)
  return (
    <section aria-labelledby="store-title" id="store">
      <h3 id="store-title">Store it</h3>
      <p class="line-of-counts">
        {newInWords(words, open.length > 0)}
        {already > 0 && ` ${capital(counted(already, 'value is', 'values are'))} in the log already.`}
        {mended.all > 0 &&
          ` ${capital(counted(mended.all, 'new value corrects an old one', 'new values correct old ones'))}.`}
        {takenBack > 0 &&
          ` ${capital(counted(takenBack, 'value was', 'values were'))} taken back before and ${takenBack === 1 ? 'stays' : 'stay'} out.`}
      </p>
      {open.length > 0 && (
        <p class="caution">
          {capital(counted(open.length, 'question needs', 'questions need'))} an answer first:{' '}
          <a href={`#${open[0]}`}>to the {open.length === 1 ? 'question' : 'first of them'}</a>.
        </p>
      )}
      {sending?.issues ? (
        <div class="not-yet" role="alert">
          <p>
            {sending.issues.map(issueInWords).join(' ')} {countText(sending.sent)} of {countText(sending.of)}{' '}
            entries are in the log; the others are in this page, so leave it open. Sent again, none is stored
            twice.
          </p>
          <button type="button" class="large" onClick={store}>
            Send the others
          </button>
        </div>
      ) : sending ? (
        <p class="working">
          <span>
            Storing: {countText(sending.sent)}
            {sending.of > 0 && ` of ${countText(sending.of)}`} entries.
          </span>
          <progress max={sending.of || 1} value={sending.sent} aria-label="Share that is stored" />
        </p>
      ) : (
        open.length === 0 &&
        words !== '' &&
        issues.length === 0 && (
          <button type="button" class="large store" disabled={working !== undefined} onClick={store}>
            Store {words}
          </button>
        )
      )}
    </section>
  )
}

/** While a question is open nobody knows whether anything is new. */
function newInWords(words: string, isOpen: boolean): string {
  if (words === '') return isOpen ? '' : 'Nothing of it is new.'
  return isOpen ? `New so far: ${words}.` : `New: ${words}.`
}

/** Elements of the questions that must be answered before anything is stored. */
export function openOf(preview: Preview): readonly string[] {
  const tanks = preview.unplaced.map((tank) => idOfQuestion(`tank-${tank}`))
  return [...tanks, ...mustAnswer(preview).map(({ id }) => idOfQuestion(id))]
}
