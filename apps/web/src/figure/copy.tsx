import { useState } from 'preact/hooks'
import { speak } from '../shell/spoken.ts'
import { dateFormat } from '../ways/dates.ts'
import { derivationText } from './as-text.ts'
import type { ComputedFigure } from './computed.ts'
import { entriesOf } from './entries.ts'
import { shownEntries } from './entries-behind.tsx'

/** Copies a derivation as plain text; where the browser lets no page do that, gives the text to be copied. */
export function CopyAsText({ of }: { readonly of: ComputedFigure }) {
  const [done, setDone] = useState('')
  const [text, setText] = useState<string | undefined>()
  const copy = async () => {
    try {
      const made = await textOf(of)
      // Absent where the page was not opened on this machine or over HTTPS.
      if (navigator.clipboard === undefined) setText(made)
      else
        await navigator.clipboard.writeText(made).then(
          () => tell('Copied.'),
          () => setText(made),
        )
    } catch (error) {
      tell(error instanceof Error ? error.message : String(error))
    }
  }
  const tell = (words: string) => {
    setDone(words)
    speak(words)
  }
  return (
    <>
      <button type="button" class="key" onClick={() => void copy()}>
        Copy as text
      </button>
      {done && <span class="quiet">{done}</span>}
      {text !== undefined && (
        <label class="to-copy">
          Your browser does not let the page copy. Copy it from here:
          <textarea readOnly rows={8} value={text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </>
  )
}

async function textOf(of: ComputedFigure): Promise<string> {
  const derivation = of.derivation()
  const entries = await entriesOf(derivation.entries.slice(-shownEntries))
  return derivationText(of, derivation, entries, dateFormat({ dateStyle: 'long' }).format(new Date()))
}
