import {
  isQuantityName,
  type QuantityName,
  quantities,
  quantityNames,
  readingInCommonUnits,
  readQuantity,
  statedInWords,
  words,
} from '@holdfast/quantities'
import { useState } from 'preact/hooks'
import { Choices } from './choices.tsx'

/** What stands in the field when a quantity is chosen, so that one sees how it is written. */
const starts: Partial<Record<QuantityName, string>> = {
  nitrate: '5 mg/L NO3',
  phosphate: '0.05 mg/L PO4',
  ammonia: '0.2 mg/L NH3-N',
  nitrite: '0.1 mg/L NO2',
  alkalinity: '8 dKH',
  salinity: '35 psu',
  volume: '50 US gal',
  temperature: '78 °F',
}

/** A figure in all its usual units; what has two meanings is asked about. */
export function Convert() {
  const [name, setName] = useState<QuantityName>('nitrate')
  const [text, setText] = useState(starts.nitrate ?? '')
  const choose = (next: string) => {
    if (!isQuantityName(next)) return
    setName(next)
    setText(starts[next] ?? '')
  }
  return (
    <section class="view" aria-labelledby="convert-title">
      <h2 id="convert-title">Units</h2>
      <p class="lead">Write a figure as your kit or your source says it.</p>
      <div class="blank">
        <label for="quantity">It is</label>
        <select id="quantity" value={name} onChange={(event) => choose(event.currentTarget.value)}>
          {quantityNames.map((each) => (
            <option key={each} value={each}>
              {quantities[each].title}
            </option>
          ))}
        </select>
      </div>
      <div class="blank">
        <label for="figure">Figure</label>
        <span class="typed">
          <input
            id="figure"
            type="text"
            autocomplete="off"
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </span>
      </div>
      <div aria-live="polite" id="convert-answer">
        <Answer name={name} text={text} onAnswer={setText} />
      </div>
    </section>
  )
}

interface AnswerOf {
  readonly name: QuantityName
  readonly text: string
  readonly onAnswer: (text: string) => void
}

function Answer({ name, text, onAnswer }: AnswerOf) {
  const where = quantities[name].title
  if (text.trim() === '') return <p class="line quiet">A number with its unit, such as 5 mg/L.</p>
  const read = readQuantity(name, text, { where })
  if (read.ask) return <Choices ask={read.ask} onAnswer={onAnswer} />
  if (read.issues) return <p class="issue">{read.issues.map(words).join(' ')}</p>
  const usual = readingInCommonUnits(name, read.value)
  return (
    <ul class="converted">
      {(usual.length > 0 ? usual : [{ unit: read.value.canonical, stated: read.value.stated }]).map(
        ({ unit, stated }) => (
          <li key={unit}>
            <span class="number">{statedInWords(stated)}</span> {unit}
          </li>
        ),
      )}
    </ul>
  )
}
