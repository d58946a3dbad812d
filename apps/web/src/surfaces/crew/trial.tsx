import { type Alternative, type Planned, starving } from '@holdfast/crew-plan'
import { plain } from '../../figure/numbers.ts'
import { Says } from '../../figure/says.tsx'
import type { Sentence } from '../../figure/sentence.ts'
import { counted, several } from '../counted.ts'
import { Books } from './books.tsx'
import { type CrewGround, causes, eatsFigure, hungerFigure, lossFigure, waterFigure } from './figures.ts'

/** The months after which the water is told. */
const told = [
  { month: 3, when: 'After three months' },
  { month: 12, when: 'After a year' },
] as const

interface TrialOf {
  readonly ground: CrewGround
  /** Shows another crew in its place. */
  readonly onOther: (other: Alternative) => void
}

/** How the crew fared in the model, and where the numbers of a plan come from. */
export function Trial({ ground, onOther }: TrialOf) {
  const { check, crew, proved, effect, books, alternatives, toFeed, steps, byHand } = ground.plan
  const changes = steps.length > 0 || byHand.length > 0 || crew.some(({ leave }) => leave > 0)
  const fates = new Map(check.crew.map((fate) => [fate.taxon, fate]))
  const lives = crew.filter(({ taxon }) => fates.has(taxon))
  const fed = new Set(toFeed?.map(({ taxon }) => taxon))
  const thin = lives
    .filter(({ taxon }) => !fed.has(taxon) && (fates.get(taxon)?.bands.hunger.high ?? 0) > starving)
    .map(({ tradeName }) => several(tradeName))
  const whose = toFeed ? 'who comes finds food' : 'everybody finds food'
  const found = thin.length > 0 ? `In most of the simulated tanks ${whose}` : begun(whose)
  return (
    <section aria-labelledby="trial">
      <h3 id="trial">Tried for a year in the model</h3>
      <p class="line">{found}, and what grows is held with your hand at its side.</p>
      {thin.length > 0 && (
        <p class="line">
          In some of the simulated tanks too little grows for {thin.join(', ')}: look whether they grow thin,
          and have dried seaweed at hand.
        </p>
      )}
      {lives.map((one) => (
        <Says key={one.taxon} sentence={faring(one, ground)} />
      ))}
      {(changes ? told : []).map(({ month, when }) => {
        const water = effect?.water[month - 1]
        if (!water) return null
        const figure = (what: 'nitrate_mg_L' | 'phosphate_mg_L', crewIs: 'with' | 'without') =>
          waterFigure(what, month, crewIs === 'with' ? water : water.without, crewIs, ground)
        const sentence = [
          `${when} the water has `,
          figure('nitrate_mg_L', 'with'),
          ' and ',
          figure('phosphate_mg_L', 'with'),
          '; without this plan ',
          figure('nitrate_mg_L', 'without'),
          ' and ',
          figure('phosphate_mg_L', 'without'),
          '.',
        ]
        return <Says key={month} sentence={sentence} />
      })}
      {books && changes && <Books books={books} />}
      <details>
        <summary>How a crew is found</summary>
        <p class="line">
          What grows and what one animal of each kind would eat of it are read from a few simulated tanks that
          your readings weigh. The cheapest whole numbers of animals that eat it, find food when less grows,
          have room and go together are found by an integer programme
          {proved
            ? ' to within one in a hundred of the best'
            : '; how near it is to the best was not proved in time'}
          . That crew then lives a year in the same tanks; what is found there corrects the next, until it
          holds.
        </p>
      </details>
      {alternatives.length > 0 && (
        <>
          <h3>Others that would do as well</h3>
          <ul class="line">
            {alternatives.map((other) => (
              <li key={comersOf(other)}>
                {comersOf(other)}{' '}
                <button
                  type="button"
                  class="key"
                  aria-label={`Look at this crew: ${comersOf(other)}`}
                  onClick={() => onOther(other)}
                >
                  Look at this crew
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

/** Losses worth telling: a year costs at least so many, animals. */
const worthTelling = 0.05

function faring(one: Planned, ground: CrewGround): Sentence {
  const [eats, hunger, loss] = [eatsFigure, hungerFigure, lossFigure].map((figure) => figure(one, ground))
  if (!eats || !hunger || !loss) return []
  const why = causes(one).filter(([, count]) => count >= worthTelling)
  const [first] = why
  const causesTold =
    why.length === 1 && first
      ? `, ${first[0]}`
      : `: ${why.map(([cause, count]) => `${plain(Number(count.toPrecision(2)))} ${cause}`).join(', ')}`
  return [
    `${begun(one.tradeName)}: eats `,
    eats,
    ' of algae three months on, and at the leanest uses up ',
    hunger,
    ' of its reserve.',
    ...(why.length === 0 ? [] : [' A year costs ', loss, `${causesTold}.`]),
  ]
}

const comersOf = ({ crew }: Alternative): string =>
  crew
    .filter(({ come }) => come > 0)
    .map(({ come, tradeName }) => counted(come, tradeName))
    .join(', ')

const begun = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
