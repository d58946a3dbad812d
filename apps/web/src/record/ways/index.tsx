import { useState } from 'preact/hooks'
import { plain } from '../../figure/numbers.ts'
import { amount } from '../../ways/amounts.ts'
import { dayInWords } from '../../ways/dates.ts'
import { choices, chooseWays, type Ways, ways } from '../../ways/ways.ts'

const questions: {
  readonly [Name in keyof Ways]: { readonly asks: string; readonly says: Record<Ways[Name], string> }
} = {
  units: {
    asks: 'Volumes, lengths, masses and temperatures',
    says: { metric: 'Litres, centimetres, kilograms, °C', US: 'US gallons, inches, pounds, °F' },
  },
  decimal: { asks: 'The decimal mark', says: { point: 'Point, 0.05', comma: 'Comma, 0,05' } },
  dates: {
    asks: 'Dates',
    says: { 'day first': '1 March 2026', 'month first': 'March 1, 2026', 'year first': '2026-03-01' },
  },
  keys: { asks: 'Single letters as keys', says: { on: 'On', off: 'Off' } },
}

/** How this keeper reads figures; kept in this browser, and the log stays as it was typed. */
export function YourWays() {
  const [now, setNow] = useState(ways())
  const choose = (next: Partial<Ways>) => {
    chooseWays(next)
    setNow(ways())
  }
  return (
    <section class="view log-form" aria-labelledby="ways-title">
      <h2 id="ways-title">Units and dates</h2>
      <p class="lead">
        How figures are written on this page. It is kept in this browser; your log keeps every figure as you
        typed it, and you can type any unit anywhere.
      </p>
      {(Object.keys(questions) as (keyof Ways)[]).map((name) => (
        <Question key={name} name={name} now={now} onChoose={choose} />
      ))}
      <p class="line" role="status">
        So a system reads {amount('volume', 600)} at {amount('temperature', 25.5)}, phosphate {plain(0.05)}{' '}
        mg/L PO4, on {dayInWords('2026-03-01')}.
      </p>
      <p class="line quiet">
        Nitrate is always written with what it is counted as (NO3 or NO3-N), phosphate too (PO4 or P).
      </p>
    </section>
  )
}

interface QuestionOf<Name extends keyof Ways> {
  readonly name: Name
  readonly now: Ways
  readonly onChoose: (next: Partial<Ways>) => void
}

function Question<Name extends keyof Ways>({ name, now, onChoose }: QuestionOf<Name>) {
  const { asks, says } = questions[name]
  return (
    <fieldset class="choice">
      <legend>{asks}</legend>
      <div class="options">
        {choices[name].map((value) => (
          <label key={value}>
            <input
              type="radio"
              name={name}
              checked={now[name] === value}
              onChange={() => onChoose({ [name]: value })}
            />
            {says[value]}
          </label>
        ))}
      </div>
    </fieldset>
  )
}
