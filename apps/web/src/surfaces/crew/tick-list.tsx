import { type Grazer, type GrazerGroup, type OwnAnimal, withOwnAnimals } from '@holdfast/facts'
import { type Ticked, tick } from './wishes.ts'

const groupNames: Readonly<Record<GrazerGroup, string>> = {
  snail: 'Snails',
  snail_scavenger: 'Snails that clear leftovers',
  conch: 'Conchs',
  limpet: 'Limpets',
  chiton: 'Chitons',
  abalone: 'Abalones',
  sea_slug: 'Sea slugs',
  sea_hare: 'Sea hares',
  hermit_crab: 'Hermit crabs',
  crab: 'Crabs',
  shrimp_non_grazer: 'Shrimps',
  urchin: 'Urchins',
  brittle_star: 'Brittle stars',
  sea_cucumber: 'Sea cucumbers',
  blenny: 'Blennies',
  goby: 'Gobies',
  tang: 'Tangs',
  rabbitfish: 'Rabbitfishes',
  dwarf_angelfish: 'Dwarf angelfishes',
  other_fish: 'Other fishes',
  pod: 'Pods',
}

/** Animals that can be had; of the others there is nothing to tick. */
const offeredWith = (own: readonly OwnAnimal[]): readonly Grazer[] =>
  withOwnAnimals(own)
    .grazers()
    .filter(({ offered }) => offered !== 'comes by itself' && offered !== 'as a culture')

interface Ticking {
  readonly ticked: Ticked
  readonly onTick: (ticked: Ticked) => void
}

interface TickListOf extends Ticking {
  readonly own: readonly OwnAnimal[] | undefined
}

/** Every animal of the trade and the keeper's own, to be liked, refused or left to the plan. */
export function TickList({ own = [], ticked, onTick }: TickListOf) {
  const offered = offeredWith(own)
  const groups = [...new Set(offered.map(({ group }) => group))]
  return (
    <details class="tick-list">
      <summary>Animals you would like, or never want</summary>
      {groups.map((group) => (
        <details key={group}>
          <summary>{groupNames[group]}</summary>
          <ul>
            {offered
              .filter((animal) => animal.group === group)
              .map((animal) => (
                <Row key={animal.taxon} animal={animal} ticked={ticked} onTick={onTick} />
              ))}
          </ul>
        </details>
      ))}
    </details>
  )
}

function Row({ animal: { taxon, tradeName }, ticked, onTick }: Ticking & { readonly animal: Grazer }) {
  return (
    <li>
      <span>
        {tradeName} {tradeName !== taxon && <i class="quiet">{taxon}</i>}
      </span>
      {(['liked', 'never'] as const).map((list) => (
        <label key={list} class="check">
          <input
            type="checkbox"
            checked={ticked[list].includes(taxon)}
            aria-label={`${list === 'liked' ? 'Would like' : 'Never'}: ${tradeName}, ${taxon}`}
            onChange={() => onTick(tick(ticked, list, taxon))}
          />
          {list === 'liked' ? 'would like' : 'never'}
        </label>
      ))}
    </li>
  )
}
