import type { BookLine } from '@holdfast/crew-plan'
import { plain } from '../../figure/numbers.ts'

/** What streams are called here, where their own word does not do. */
const words: Readonly<Record<string, string>> = {
  'in: salt': 'Salt mix',
  'out: air': 'Gas to the air',
  'out: foam': 'Foam of the skimmer',
  'out: unexplained': 'Not explained',
  'more inside at the end': 'More in the system at the end',
}

const groups = [
  { title: 'Eaten by the crew', of: (stream: string) => !/^(?:in|out): |^more /.test(stream) },
  { title: 'Comes in', of: (stream: string) => stream.startsWith('in: ') },
  { title: 'Goes out', of: (stream: string) => stream.startsWith('out: ') },
  { title: 'Stays', of: (stream: string) => stream.startsWith('more ') },
]

/** Less than this on all sides, mg a day, is no line to read. */
const noLine = 0.05

/** The books of the coming year with a plan, and in brackets without it. */
export function Books({ books }: { readonly books: readonly BookLine[] }) {
  const lines = books.filter((line) => [...amounts(line)].some((amount) => Math.abs(amount) >= noLine))
  return (
    <details class="books">
      <summary>What a year brings and takes, with this plan and without</summary>
      <table class="ledger">
        <caption>Milligrams a day, the middle of the simulated tanks; in brackets, without this plan</caption>
        <thead>
          <tr>
            <th scope="col">Stream</th>
            <th scope="col">Nitrogen</th>
            <th scope="col">Phosphorus</th>
          </tr>
        </thead>
        {groups.map(({ title, of }) => {
          const own = lines.filter(({ stream }) => of(stream))
          return own.length === 0 ? null : (
            <tbody key={title}>
              <tr>
                <th scope="rowgroup" colSpan={3} class="quiet">
                  {title}
                </th>
              </tr>
              {own.map((line) => (
                <tr key={line.stream}>
                  <th scope="row">{titleOf(line.stream)}</th>
                  <Amount mg={line.N_mg_day} without={line.without.N_mg_day} />
                  <Amount mg={line.P_mg_day} without={line.without.P_mg_day} />
                </tr>
              ))}
            </tbody>
          )
        })}
      </table>
    </details>
  )
}

const amounts = ({ N_mg_day, P_mg_day, without }: BookLine): readonly number[] => [
  N_mg_day,
  P_mg_day,
  without.N_mg_day,
  without.P_mg_day,
]

function Amount({ mg, without }: { readonly mg: number; readonly without: number }) {
  return (
    <td>
      <b>{tenths(mg)}</b> <span class="quiet">({tenths(without)})</span>
    </td>
  )
}

/** To a tenth of a milligram; nothing stands without a sign. */
const tenths = (mg: number): string => plain(Number(mg.toFixed(1)) || 0)

function titleOf(stream: string): string {
  const plainly = words[stream] ?? stream.replace(/^(?:in|out): /, '')
  return `${plainly.charAt(0).toUpperCase()}${plainly.slice(1)}`
}
