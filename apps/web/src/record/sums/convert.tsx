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
import { withMark } from '../../ways/decimal.ts'
import { Choices } from './choices.tsx'

/** How a figure of each quantity is written; it stands in the field when the quantity is chosen. */
const written: Readonly<Record<QuantityName, string>> = {
  volume: '50 US gal',
  length: '24 in',
  area: '1.2 m²',
  mass: '3 oz',
  temperature: '78 °F',
  duration: '6 weeks',
  flow: '800 US gal/h',
  power: '120 W',
  density: '1.0235 kg/L',
  light: '200 µmol/m²/s',
  'daily-light': '7 mol/m²/d',
  nitrate: '5 mg/L NO3',
  nitrite: '0.1 mg/L NO2',
  ammonia: '0.2 mg/L NH3-N',
  phosphate: '0.05 mg/L PO4',
  silicate: '1 mg/L SiO2',
  calcium: '420 mg/L',
  magnesium: '1300 mg/L',
  potassium: '400 mg/L',
  alkalinity: '8 dKH',
  salinity: '35 psu',
}

/** A figure in all its usual units; what has two meanings is asked about. */
export function Convert() {
  const [name, setName] = useState<QuantityName>('nitrate')
  const [text, setText] = useState(withMark(written.nitrate))
  const choose = (next: string) => {
    if (!isQuantityName(next)) return
    setName(next)
    setText(withMark(written[next]))
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
  if (text.trim() === '')
    return <p class="line quiet">A number with its unit, such as {withMark(written[name])}.</p>
  const read = readQuantity(name, text, { where })
  if (read.ask) return <Choices ask={read.ask} onAnswer={onAnswer} />
  if (read.issues) return <p class="issue">{read.issues.map(words).join(' ')}</p>
  const usual = readingInCommonUnits(name, read.value)
  return (
    <ul class="converted">
      {(usual.length > 0 ? usual : [{ unit: read.value.canonical, stated: read.value.stated }]).map(
        ({ unit, stated }) => (
          <li key={unit}>
            <span class="number">{withMark(statedInWords(stated))}</span> {unit}
          </li>
        ),
      )}
    </ul>
  )
}
