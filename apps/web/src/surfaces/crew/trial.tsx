import type { Alternative, Planned } from '@holdfast/crew-plan'
import { plain } from '../../figure/numbers.ts'
import type { Plan } from './plan.tsx'

/** How the crew fared in the model, and where the numbers of a plan come from. */
export function Trial({ plan }: { readonly plan: Plan }) {
  const { check, crew, proved, effect, alternatives } = plan
  const months = [3, 12].flatMap((month) => {
    const water = effect?.water[month - 1]
    return water ? [{ when: month === 3 ? 'After three months' : 'After a year', ...water }] : []
  })
  return (
    <section aria-labelledby="trial">
      <h3 id="trial">Tried for a year in the model</h3>
      <p class="line">Nobody starves, and what grows is held with your hand at its side.</p>
      <ul class="line">
        {crew.map((one) => (
          <li key={one.taxon}>
            {one.tradeName}: {hungerOf(one, check.crew)} {lossesOf(one)}
          </li>
        ))}
        {months.map(({ when, nitrate_mg_L, phosphate_mg_L, without }) => (
          <li key={when}>
            {when} the water has {short(nitrate_mg_L)} mg/L NO3 and {short(phosphate_mg_L)} mg/L PO4; without
            this crew {short(without.nitrate_mg_L)} and {short(without.phosphate_mg_L)}.
          </li>
        ))}
      </ul>
      {alternatives.length > 0 && (
        <>
          <h3>Others that would do as well</h3>
          <ul class="line">
            {alternatives.map((other) => (
              <li key={comersOf(other)}>{comersOf(other)}</li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary>Where these numbers come from</summary>
        <p class="line">
          What grows and what one animal of each kind would eat of it are read from a few simulated tanks that
          your readings weigh. The cheapest whole numbers of animals that eat it, find food when less grows,
          have room and go together are found by an integer programme
          {proved
            ? ' to within one in a hundred of the best'
            : '; how near it is to the best was not proved in time'}
          . That crew then lives a year in the same tanks; what is found there corrects the next, until it
          holds. All numbers are medians of these tanks.
        </p>
      </details>
    </section>
  )
}

const short = (value: number): string => plain(Number(value.toPrecision(2)))

function hungerOf({ taxon }: Planned, fates: Plan['check']['crew']): string {
  const hunger = fates.find((fate) => fate.taxon === taxon)?.hunger
  return hunger === undefined ? '' : `uses up ${Math.round(100 * hunger)} % of its reserve at the leanest.`
}

/** Losses worth telling: a year costs at least so many, animals. */
const worthTelling = 0.05

function lossesOf({ turnover: { firstMonth, age, mates, hunger } }: Planned): string {
  const causes = [
    ['in the first month', firstMonth],
    ['by age', age],
    ['to tank mates', mates],
    ['by hunger', hunger],
  ] as const
  const told = causes.flatMap(([cause, count]) => (count >= worthTelling ? [`${short(count)} ${cause}`] : []))
  return told.length === 0 ? '' : `To be lost in a year, on average: ${told.join(', ')}.`
}

const comersOf = ({ crew }: Alternative): string =>
  crew
    .filter(({ come }) => come > 0)
    .map(({ come, tradeName }) => `${come} ${tradeName}`)
    .join(', ')
