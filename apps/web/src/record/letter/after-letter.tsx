import { addressOf } from '../../shell/address.ts'

/** What comes after the first letter. */
export function AfterLetter({ system }: { readonly system: string }) {
  const of = { system }
  return (
    <div class="view" role="status">
      <h3>The letter is kept. What next?</h3>
      <ul class="plain">
        <li>
          <a href={addressOf('record', 'import', of)}>Bring in a sheet of past tests</a>
        </li>
        <li>
          <a href={addressOf('record', undefined, { ...of, kind: 'reading' })}>Log a first reading</a>
        </li>
        <li>
          <a href={addressOf('water', undefined, of)}>See its ledger and outlook</a>
        </li>
      </ul>
    </div>
  )
}
