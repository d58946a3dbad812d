import { outcome } from '@holdfast/client'
import { useState } from 'preact/hooks'
import { api, told } from '../../shell/api.ts'
import { speak } from '../../shell/spoken.ts'
import { type Taken, takenInWords } from './taken-in-words.ts'

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'at work'; readonly name: string }
  | { readonly is: 'done'; readonly taken: Taken }
  | { readonly is: 'refused'; readonly why: string }

/** Takes over what a file of an export holds: what is here stays, and nothing is doubled. */
export function BringBack() {
  const [state, setState] = useState<State>({ is: 'idle' })
  const show = (next: State) => {
    setState(next)
    speak(inWords(next))
  }
  const bring = (file: File) => {
    show({ is: 'at work', name: file.name })
    send(file).then(
      (taken) => show({ is: 'done', taken }),
      (error: unknown) =>
        show({ is: 'refused', why: error instanceof Error ? error.message : String(error) }),
    )
  }
  return (
    <section class="view" aria-labelledby="back-title">
      <h2 id="back-title">Bring it back</h2>
      <p class="lead">
        Into an empty log it all comes, to the last entry; into one that has some of it comes what is missing.
        What is here stays as it is, and the same file twice changes nothing.
      </p>
      <div class="drop">
        <p>
          <label class="drop-words" for="export-file">
            A file that was taken from here
          </label>
        </p>
        <input
          id="export-file"
          type="file"
          accept=".json,.csv,.xlsx"
          disabled={state.is === 'at work'}
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? []
            if (file) bring(file)
            event.currentTarget.value = ''
          }}
        />
      </div>
      {state.is !== 'idle' && <p class={state.is === 'refused' ? 'issue' : 'line'}>{inWords(state)}</p>}
      {state.is === 'done' && (
        <p class="acts">
          <a href={location.pathname}>To your systems</a>
        </p>
      )}
    </section>
  )
}

function inWords(state: State): string {
  if (state.is === 'at work') return `${state.name} is being read and stored.`
  if (state.is === 'done') return takenInWords(state.taken)
  return state.is === 'refused' ? state.why : ''
}

/** @throws Error with a sentence for the page */
async function send(file: File): Promise<Taken> {
  const asked = api.POST('/api/export', {
    headers: { 'content-type': 'application/octet-stream' },
    body: file,
    bodySerializer: () => file,
  })
  return told(await outcome(asked))
}
