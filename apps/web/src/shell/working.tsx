import { useEffect } from 'preact/hooks'
import type { Asked } from '../worker/asked.ts'
import type { Issue } from '../worker/protocol.ts'
import { speak } from './spoken.ts'

/** Says that something is being worked out, how far it is, and what went wrong. Room is kept, so that nothing jumps. */
export function Working({ asked, what }: { readonly asked: Asked<unknown>; readonly what: string }) {
  const { working, issue, answer, old } = asked
  const long = working?.long ?? false
  const again = old || answer !== undefined ? ' again' : ''
  useEffect(() => {
    if (long) speak(`${what} is being worked out.`)
  }, [long, what])
  useEffect(() => {
    if (issue) speak(issueText(issue))
  }, [issue])
  return (
    <div class="working">
      {working && (
        <>
          <span>
            {what} is being worked out{again}
            {long ? `, ${Math.round(working.share * 100)} % done` : ''}.
          </span>
          {long && (
            <>
              <progress max={1} value={working.share} aria-label={`${what}: share worked out`} />
              <button type="button" class="key" onClick={asked.cancel}>
                Stop it
              </button>
            </>
          )}
        </>
      )}
      {issue && <span class="issue">{issueText(issue)}</span>}
    </div>
  )
}

const issueText = ({ where, got, accepted, next }: Issue) =>
  `${where}: ${[got, accepted].filter(Boolean).join('; ')}. ${next}`.replace('..', '.')
