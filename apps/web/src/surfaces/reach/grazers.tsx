import type { GrazerReach } from '@holdfast/reach'
import { Says } from '../../figure/says.tsx'
import { eatenFigure, type ReachGround, usedFigure } from './figures.ts'

interface GrazersOf {
  readonly ground: ReachGround
  readonly picked: string | undefined
  readonly onPick: (taxon: string | undefined) => void
}

/** Who grazes: each with what it eats, and a button that shows its range in the picture. */
export function Grazers({ ground, picked, onPick }: GrazersOf) {
  const { grazers } = ground.told.reach
  return (
    <section aria-labelledby="grazers">
      <h3 id="grazers">Who grazes</h3>
      {grazers.length === 0 && <p class="line">No grazer lives here, as far as the log says.</p>}
      <ul class="grazers">
        {grazers.map((grazer) => (
          <li key={grazer.taxon}>
            <Grazer grazer={grazer} ground={ground} isPicked={grazer.taxon === picked} onPick={onPick} />
          </li>
        ))}
      </ul>
    </section>
  )
}

interface GrazerOf extends Pick<GrazersOf, 'ground' | 'onPick'> {
  readonly grazer: GrazerReach
  readonly isPicked: boolean
}

function Grazer({ grazer, ground, isPicked, onPick }: GrazerOf) {
  const { taxon, tradeName, living, gets } = grazer
  const isOne = Math.round(living) === 1
  const they = isOne ? 'it' : 'they'
  const surfaces = ground.data.system.surfaces.length * 3
  return (
    <>
      <button
        type="button"
        class="key"
        aria-pressed={isPicked}
        onClick={() => onPick(isPicked ? undefined : taxon)}
      >
        Where it gets: {tradeName}
      </button>
      <Says
        sentence={[
          isOne ? 'One lives here. It eats ' : `${Math.round(living)} live here. They eat `,
          eatenFigure(grazer, ground),
          ' of algae, ',
          usedFigure(grazer, ground),
          ` of what ${they} could. ${isOne ? 'It gets' : 'They get'} to ${gets.length} of ${surfaces} places.`,
        ]}
      />
    </>
  )
}
