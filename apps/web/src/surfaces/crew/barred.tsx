import type { CrewAnswer } from '@holdfast/crew-plan'
import { grazer } from '@holdfast/facts'
import { gathered } from './gathered.ts'

type Barring = CrewAnswer['barred'][number]

/** Why animals do not come, in the order in which a keeper could change it. */
const reasons: Readonly<Record<Barring['code'], string>> = {
  refused: 'You refused them',
  'caution not accepted': 'Safe with caution only: you may allow them above',
  'rarely sold': 'Rarely sold, or had for a while only',
  'too many already': 'Too many of the kind already',
  'no room': 'Not enough room',
  temperature: 'The water is too warm or too cold',
  condition: 'Something here does not suit them',
  'tank mate': 'They do not go with who lives here',
  'not bought': 'Not bought one by one',
  'not safe in a reef': 'Not safe in a reef',
}

/** Animals that are not to come, by reason. */
export function Barred({ barred }: Pick<CrewAnswer, 'barred'>) {
  if (barred.length === 0) return null
  const codes = (Object.keys(reasons) as readonly Barring['code'][]).filter((code) =>
    barred.some((one) => one.code === code),
  )
  return (
    <details class="barred">
      <summary>Who may not come, and why: {barred.length}</summary>
      {codes.map((code) => (
        <section key={code} aria-label={reasons[code]}>
          <h4>{reasons[code]}</h4>
          <dl>
            {gathered(
              barred
                .filter((one) => one.code === code)
                .map(({ taxon, why }) => ({ name: begun(grazer(taxon)?.tradeName ?? taxon), says: [why] })),
            ).map(({ names, says }) => (
              <div key={names.join()}>
                <dt>{names.join(', ')}</dt>
                <dd>{says.map(ended).join(' ')}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </details>
  )
}

const ended = (text: string): string => `${begun(text)}${/[.?!]$/.test(text) ? '' : '.'}`

const begun = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
