import '../../style/import.css'
import { addressOf } from '../../shell/address.ts'
import { BringBack } from './bring-back.tsx'

const forms = [
  { name: 'json', words: 'As JSON', is: 'for another Holdfast, and for programs' },
  { name: 'xlsx', words: 'As XLSX', is: 'for a spreadsheet program; one row for each entry' },
  { name: 'csv', words: 'As CSV', is: 'for everything else; one row for each entry' },
] as const

/** The whole log as a file to keep elsewhere, and the way back. */
export function Copies() {
  return (
    <>
      <section class="view copies" aria-labelledby="copies-title">
        <h2 id="copies-title">Take everything with you</h2>
        <p class="lead">
          Each file holds the whole log: every system, every entry as you wrote it, what was corrected and
          taken back, and your pictures. Keep one on another machine: a copy beside the log is lost with it.
        </p>
        <ul class="plain">
          {forms.map(({ name, words, is }) => (
            <li key={name}>
              <a href={`api/export.${name}`} download="">
                {words}
              </a>
              , {is}.
            </li>
          ))}
        </ul>
      </section>
      <BringBack />
      <p class="acts">
        <a href={addressOf('record', 'import')}>Bring in a spreadsheet of your own instead</a>
      </p>
    </>
  )
}
