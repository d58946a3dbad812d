import { askWater } from '@holdfast/seawater'
import { useState } from 'preact/hooks'
import { plain } from '../figure/numbers.ts'
import { type Sum, sums } from './sums.ts'

/** The answer to a sum from what stands in its blanks, in words. */
export function answerTo(sum: Sum, typed: Readonly<Record<string, string>>): string {
  const inputs = Object.fromEntries(
    sum.blanks.map(({ input, start }) => [input, Number((typed[input] ?? String(start)).replace(',', '.'))]),
  )
  const unread = sum.blanks.find(({ input }) => Number.isNaN(inputs[input]))
  if (unread) return `${unread.label}: "${typed[unread.input]}" is no number. Write it as 35 or 35.2.`
  const answer = askWater(sum.quantity, { ...inputs, ...sum.fixed })
  if (answer.ok) return `${plain(answer.value * sum.shown.factor)} ${sum.shown.unit}`
  return answer.issues
    .map(({ where, got, accepted, next }) => {
      const label = sum.blanks.find(({ input }) => input === where)?.label ?? capital(where)
      return `${label}: ${String(got)} cannot be taken. ${accepted} ${next}`.trim()
    })
    .join(' ')
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)

/** One sum at a time, worked out as one types. */
export function SeaWater() {
  const [id, setId] = useState(sums[0]?.id)
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({})
  const sum = sums.find((one) => one.id === id)
  if (!sum) return null
  return (
    <section class="view" aria-labelledby="sea-water-title">
      <h2 id="sea-water-title">Sea water</h2>
      <p class="lead">Sums that come up beside the tank. Nothing here is written into your log.</p>
      <div class="blank">
        <label for="sum">You want to know</label>
        <select
          id="sum"
          value={id}
          onChange={(event) => {
            setId(event.currentTarget.value)
            setTyped({})
          }}
        >
          {sums.map((one) => (
            <option key={one.id} value={one.id}>
              {one.asks}
            </option>
          ))}
        </select>
      </div>
      {sum.blanks.map(({ input, label, unit, start }) => (
        <div class="blank" key={`${sum.id} ${input}`}>
          <label for={`blank-${input}`}>{label}</label>
          <span class="typed">
            <input
              id={`blank-${input}`}
              type="text"
              inputMode="decimal"
              autocomplete="off"
              value={typed[input] ?? String(start)}
              onInput={(event) => setTyped({ ...typed, [input]: event.currentTarget.value })}
            />{' '}
            <span class="quiet">{unit}</span>
          </span>
        </div>
      ))}
      <p class="answer" aria-live="polite" id="sum-answer">
        {answerTo(sum, typed)}
      </p>
      {sum.caution && <p class="line">{sum.caution}</p>}
      <p class="caption">By {sum.source}.</p>
    </section>
  )
}
