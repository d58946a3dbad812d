import type { SheetColumn } from '@holdfast/logbook'
import { counted } from '../../ways/counts.ts'
import { dayInShort, daysInWords } from '../../ways/dates.ts'
import { listInWords, quantityInWords } from './in-words.ts'
import type { Preview } from './protocol.ts'
import type { Series } from './series.ts'

/** What the sheet says, as it will be stored. */
export function Understood({ preview }: { readonly preview: Preview }) {
  const { form, titles, series, columns } = preview
  return (
    <section aria-labelledby="understood-title">
      <h3 id="understood-title">What was understood</h3>
      <p class="lead">
        {form}.{titles.length > 0 && ` Above the headings: ${titles.map((one) => `“${one}”`).join(', ')}.`}
      </p>
      <ul class="all-series">
        {series.map((one) => (
          <SeriesView
            key={[one.tank, one.quantity, one.unit, one.form, one.kit, ...one.from].join()}
            of={one}
          />
        ))}
      </ul>
      <OtherColumns columns={columns} />
    </section>
  )
}

function SeriesView({ of }: { readonly of: Series }) {
  const { quantity, unit, form, kit, tank, count, first, last, from, sample } = of
  const written = [unit, form && `as ${form}`].filter((part) => part !== undefined).join(' ')
  return (
    <li>
      <h4>
        {quantityInWords(quantity)}
        {written && <span class="quiet">, {written}</span>}
      </h4>
      <p class="quiet">
        {tank && <>{tank}: </>}
        {first && last ? `${counted(count, 'reading')}, ${daysInWords(first, last)}` : nothingYet(of)}, from{' '}
        {from.length > 3 ? counted(from.length, 'column') : listInWords(from)}
        {kit && `, by ${kit}`}.
      </p>
      {sample.length > 0 && (
        <table class="sample">
          <caption class="spoken">Some of them, as written and as stored</caption>
          <thead class="spoken">
            <tr>
              <th scope="col">Cell</th>
              <th scope="col">As written</th>
              <th scope="col">Stored as</th>
            </tr>
          </thead>
          <tbody>
            {sample.map(({ cell, text, stored, date }) => (
              <tr key={cell}>
                <td class="number quiet">{cell.slice(cell.lastIndexOf('!') + 1)}</td>
                <td>“{text}”</td>
                <td>
                  {stored} <span class="quiet day">on {dayInShort(date)}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </li>
  )
}

function nothingYet({ waiting, waitsForDays }: Series): string {
  if (waiting > 0) return `${counted(waiting, 'cell waits', 'cells wait')} for an answer`
  return waitsForDays ? 'nothing before its days are known' : 'no reading'
}

const roles: Readonly<Record<string, string>> = {
  date: 'the day',
  time: 'the time',
  note: 'notes',
  tank: 'the tank',
  kit: 'the kit',
  unit: 'the unit',
  reckoned: 'reckoned figures, not taken',
  unknown: 'not known; what stands in it is listed below',
}

/** The columns that hold no readings, in one sentence each. */
function OtherColumns({ columns }: { readonly columns: readonly SheetColumn[] }) {
  if (columns.length === 0) return null
  const said = columns.map(
    ({ letter, header, role }) =>
      `${letter} “${header.replace(/\s+/g, ' ')}”: ${roles[role] ?? `the ${role}`}`,
  )
  const isMany = columns.length > 12
  return isMany ? (
    <details>
      <summary>{counted(columns.length, 'other column')}</summary>
      <p class="quiet">{said.join('; ')}.</p>
    </details>
  ) : (
    <p class="quiet">Other columns: {said.join('; ')}.</p>
  )
}
