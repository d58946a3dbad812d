import { useEffect, useRef } from 'preact/hooks'
import type { Asked } from '../worker/asked.ts'
import type { Issue } from '../worker/protocol.ts'
import { speak } from './spoken.ts'

/** Says that something is being worked out, how far it is, and what went wrong. Room is kept, so that nothing jumps. */
export function Working({ asked, what }: { readonly asked: Asked<unknown>; readonly what: string }) {
  const { working, issue, answer, old } = asked
  const long = working?.long ?? false
  const state = stateOf(old, answer !== undefined)
  const wasLong = useRef(false)
  useEffect(() => {
    if (long) speak(`${what} is being worked out.`)
    else if (wasLong.current && !issue) speak(`${what} is worked out.`)
    wasLong.current = long
  }, [long, what, issue])
  useEffect(() => {
    if (issue) speak(issueText(issue))
  }, [issue])
  return (
    <div class="working">
      {working && (
        <>
          <span>
            {what} {state}
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

function stateOf(old: boolean, answered: boolean): string {
  if (old) return 'is being worked out again'
  return answered ? 'is rough so far and is being worked out in full' : 'is being worked out'
}

function issueText({ code, where, got, accepted, next }: Issue): string {
  const complaint =
    code === 'cancelled' ? `${where} ${got}` : `${where}: ${[got, accepted].filter(Boolean).join('; ')}`
  return `${complaint}${complaint.endsWith('.') ? '' : '.'} ${next}`
}
