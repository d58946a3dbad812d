import { algaeKinds } from '@holdfast/facts'
import type { ComponentChildren } from 'preact'
import { figureText } from '../figure/computed.ts'
import { temperature, volume } from '../record/letter/holds.ts'
import { Range } from '../record/letter/range.tsx'
import { Tuft } from '../surfaces/tuft.tsx'

/** The inks by their names in `paper.css`, and what each is for. */
const inks = {
  paper: 'the ground of everything',
  ground: 'what is chosen or quiet',
  ink: 'words, and what was measured',
  quiet: 'what stands beside, and what nobody said',
  rule: 'thin lines between',
  nitrogen: 'nitrogen, and nothing else',
  phosphorus: 'phosphorus, and nothing else',
  carbon: 'carbon, and nothing else',
  coral: 'the band that corals want',
  alarm: 'a caution or an error, always with its sentence',
} as const

/** The design language as it stands in the styles, so that a change of one is seen here. Development only. */
export function DesignLanguage() {
  return (
    <main>
      <p class="mark">Holdfast</p>
      <h1>The design language</h1>
      <p class="lead">
        A field notebook: paper and sea ink by day, deep water and chalk by night. Colour is scarce, a warning
        is a sentence, and every computed figure has its interval.
      </p>
      <Part title="Inks">
        <ul class="inks">
          {Object.entries(inks).map(([name, use]) => (
            <li key={name}>
              <svg width="56" height="36" aria-hidden="true">
                <rect width="56" height="36" class={`ink-${name}`} />
              </svg>
              <span>
                <b>{name}</b> {use}
              </span>
            </li>
          ))}
        </ul>
      </Part>
      <Part title="Type">
        <h1>A place, 2.4</h1>
        <h2>A view, 1.7</h2>
        <h3>A part of it, 1.2</h3>
        <p class="line">
          Words are set in a serif; figures stand in columns:{' '}
          <span class="figure">{figureText({ value: 4.12, low: 2.61, high: 5.99, unit: 'mg/L NO3' })}</span>
        </p>
        <p class="quiet">What is said beside is quiet and small.</p>
        <p class="issue">
          Volume: "60 foo" has no unit we know. Give a volume above 0, such as 60 L or 16 US gal.
        </p>
      </Part>
      <Part title="What is pressed">
        <p class="acts">
          <button type="button" class="large first">
            The first act
          </button>
          <button type="button" class="large">
            Another
          </button>
          <button type="button" class="key">
            A key
          </button>
          <a href="#letter">To the letter below</a>
        </p>
      </Part>
      <Part title="The letter">
        <p class="letter-line" id="letter">
          A blank that was said <input class="letter-blank" aria-label="Said" value="240 L" size={6} /> and
          one that was not{' '}
          <input class="letter-blank unsaid" aria-label="Not said" value="25.5 °C" size={7} />.
        </p>
        <p>
          <Range holds={volume} value={240} />
        </p>
        <p>
          <Range holds={temperature} value={29} />
        </p>
      </Part>
      <Part title="Textures of algae">
        <p class="growing">
          {algaeKinds().map(({ key, title }) => (
            <span key={key}>
              <Tuft algae={key} /> {title}
            </span>
          ))}
        </p>
      </Part>
    </main>
  )
}

function Part({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <section class="view">
      <h2>{title}</h2>
      {children}
    </section>
  )
}
