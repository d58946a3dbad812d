import { plain } from '../../figure/numbers.ts'
import type { Plan } from './plan.tsx'

interface TrialOf {
  readonly plan: Plan
  readonly names: ReadonlyMap<string, string>
}

/** How the crew fared in the model, and where the numbers of a plan come from. */
export function Trial({ plan: { check, crew, proved }, names }: TrialOf) {
  return (
    <section aria-labelledby="trial">
      <h3 id="trial">Tried for a year in the model</h3>
      <p class="line">Nobody starves, and what grows is held with your hand at its side.</p>
      <ul class="line">
        {check.crew
          .filter(({ taxon }) => names.has(taxon))
          .map(({ taxon, hunger }) => {
            const lost = crew.find((one) => one.taxon === taxon)?.lostInYear ?? 0
            return (
              <li key={taxon}>
                {names.get(taxon)}: uses up {Math.round(100 * hunger)} % of its reserve at the leanest; lost
                in the year: {plain(Number(lost.toPrecision(2)))}
              </li>
            )
          })}
      </ul>
      <details>
        <summary>Where these numbers come from</summary>
        <p class="line">
          What grows and what one animal of each kind would eat of it are read from five simulated tanks that
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
