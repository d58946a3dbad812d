/** How soon a crew is found among the whole catalogue, and how soon it is proved to be the cheapest. */
import { loadSolver } from '@holdfast/crew-plan'
import { drawnSystem, instance } from '@holdfast/crew-plan/testing/drawn'
import type { Surface } from '@holdfast/ecosystem'
import { grazers } from '@holdfast/facts'
import { table } from './table.ts'

const kinds = [
  ...['film_diatom', 'film_green', 'hair_green', 'turf', 'bryopsis', 'bubble', 'red_cotton', 'red_turf'],
  ...['cyano', 'dino', 'caulerpa', 'macro', 'brown_crust_lobe', 'chrysophyte', 'coralline'],
]
const more = ['plumbing_overflow', 'equipment', 'frag_rack'] as const
const sizes = [300, 600, 1200]

/** The catalogue on seven surfaces of three patches each, with every kind of algae on each. */
export async function crewBench(): Promise<void> {
  const solver = await loadSolver()
  const rows = sizes.map((volume_L) => {
    const began = performance.now()
    const { crew, candidates } = instance(
      {
        volume_L,
        surfaces: more.map((kind): Surface => ({ ...surface(volume_L), id: kind, kind })),
        everywhere: Object.fromEntries(kinds.map((kind) => [kind, 0.06])),
      },
      { withCaution: 'all', only: grazers().map(({ taxon }) => taxon) },
    )
    const built = performance.now() - began
    const { columns, rows: limits } = crew.programme
    const solved = [0.01, 0.001].map((gap) => {
      const from = performance.now()
      const found = solver(crew.programme, { gap, seconds: 60 })
      const seconds = (built + performance.now() - from) / 1000
      return `${seconds.toFixed(1)}${found.status === 'solved' && found.proved ? '' : ' unproved'}`
    })
    return [`${volume_L} L`, `${candidates.length}`, `${columns.length}`, `${limits.length}`, ...solved]
  })
  const head = ['7 x 3 x 15', 'taxa that may come', 'columns', 'rows', 'to 1 %, s', 'to 0.1 %, s']
  console.log(table([head, ...rows, ['to reach', '', '', '', '2', '10']]))
}

const surface = (volume_L: number): Surface => ({
  ...drawnSystem({ volume_L }).surfaces[0],
  area_m2: 0.1 * (volume_L / 600) ** (2 / 3),
})
