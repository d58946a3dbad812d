import '../../style/import.css'
import { issueInWords } from '@holdfast/logbook'
import { useEffect } from 'preact/hooks'
import type { Described } from '../../shell/described.ts'
import { speak } from '../../shell/spoken.ts'
import { ChooseSheet } from './choose-sheet.tsx'
import { Reading } from './reading.tsx'
import { Stored } from './stored.tsx'
import { useImport } from './use-import.ts'
import { Walk } from './walk.tsx'

/** Brings a spreadsheet of past tests into the log: nothing is guessed, and nothing is stored unasked. */
export function ImportSheet({ described }: { readonly described: Described }) {
  const walk = useImport(described)
  const { issues = [], preview, done, working, isRefused } = walk
  const trouble = preview === undefined ? issues.map(issueInWords).join(' ') : ''
  useEffect(() => {
    if (trouble) speak(trouble)
  }, [trouble])
  if (done) return <Stored done={done} described={described} onLeave={walk.leave} />
  return (
    <div class="import-walk">
      {preview === undefined && (
        <section class="view" aria-labelledby="import-title">
          <h2 id="import-title">Bring in a spreadsheet</h2>
          <p class="lead">
            Years of tests in any sheet: you see what was understood of it and answer what it leaves open.
            Nothing is stored before you say so.
          </p>
          {working === undefined && <ChooseSheet onSheet={walk.take} />}
          {trouble && (
            <p class="issue">
              {trouble}{' '}
              {!isRefused && (
                <button type="button" class="key" onClick={walk.again}>
                  Try again
                </button>
              )}
            </p>
          )}
        </section>
      )}
      {preview && <Walk walk={walk} preview={preview} />}
      <Reading stage={working} isLong={walk.isLong ?? false} onStop={walk.stop} />
    </div>
  )
}
