import { actInWords, findingInWords, type Identification, percentOf } from '@holdfast/identification'
import type { ComponentChildren } from 'preact'
import { Tuft } from '../tuft.tsx'

/** Kinds that round to nothing are not shown, and so many at most. */
const leastLikely = 0.005
const most = 5

interface FindingOf {
  readonly found: Identification
  readonly heading: string
  /** Cautions, where they belong to what is to be done. */
  readonly minded?: ComponentChildren
}

/** What the growth is as far as one knows, what to do, and what it is taken for. */
export function Finding({ found, heading, minded }: FindingOf) {
  const { chances, ends, suspect, finer, lookAlikes } = found
  const likely = chances.slice(0, most).filter(({ chance }) => chance >= leastLikely)
  const open = lookAlikes.filter(({ looked, waits }) => !looked && !waits)
  const act = actInWords(found)
  return (
    <section class="finding" aria-labelledby="finding">
      <h3 id="finding" tabIndex={-1}>
        {heading}
      </h3>
      {(ends !== 'not yet' || suspect) && <p class="line">{findingInWords(found)}</p>}
      {minded}
      {act !== '' && <p class="line">{act}</p>}
      <table>
        <caption class="spoken">Kinds, the likeliest first</caption>
        <tbody>
          {likely.map((one) => (
            <tr key={one.key}>
              <td>
                <Tuft algae={one.key} />
              </td>
              <th scope="row">{one.title}</th>
              <td class="number">{percentOf(one)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {finer && <p class="quiet">Within it: {generaOf(finer.chances)}.</p>}
      {open.length > 0 && (
        <details>
          <summary>What it is taken for</summary>
          {open.map(({ from, test }) => (
            <p key={`${from.key} ${test}`}>
              <i>Or {from.title}?</i> {test}
            </p>
          ))}
        </details>
      )}
    </section>
  )
}

const generaOf = (chances: Identification['chances']): string =>
  chances
    .filter(({ chance }) => chance >= leastLikely)
    .map((one) => `${one.title} (${percentOf(one)})`)
    .join(', ')
