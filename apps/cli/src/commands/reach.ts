import { patchWords } from '@holdfast/crew-plan'
import { algaeKind } from '@holdfast/facts'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { type Exposed, type PlaceReach, type ReachAnswer, reachOf } from '@holdfast/reach'
import { listed } from '../listed.ts'
import type { Where } from '../open-log.ts'
import { presentIn } from '../present-in.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface ReachOptions extends Where {
  readonly system?: string
  readonly members: number
  readonly seed: number
  readonly json?: true
}

/** Where the crew of today gets, what it eats in the coming week, what it leaves, and what to do where most is left. */
export async function reachCommand(options: ReachOptions, terminal: Terminal): Promise<void> {
  const { log, present } = await presentIn(options, 'Reach', terminal)
  const answer = reachOf(present)
  const { system, asOf } = log
  terminal.out(
    options.json
      ? JSON.stringify({ system: system.id, as_of: dateOf(asOf, system.timeZone), ...answer }, null, 2)
      : inWords(log, answer),
  )
}

/** What covers less of a place and grows less in a week is left out of the table. */
const shown = { cover: 0.005, grows_g_week: 0.005 }

function inWords({ system, asOf }: SystemLog, { places, grazers, exposed }: ReachAnswer): string {
  const nameOf = (taxon: string): string => grazers.find((one) => one.taxon === taxon)?.tradeName ?? taxon
  const grown = places.filter(
    ({ wanted, cover, growth_g_week }) =>
      !wanted && (cover >= shown.cover || growth_g_week.value >= shown.grows_g_week),
  )
  const rows = grown.map(({ surface, patch, kind, cover, growth_g_week, eaten, left_g_week }) => [
    surface,
    patchWords[patch],
    algaeKind(kind).title,
    (100 * cover).toFixed(0),
    growth_g_week.value.toPrecision(2),
    left_g_week.value.toPrecision(2),
    eaten.map(({ taxon }) => nameOf(taxon)).join(', ') || 'nobody',
  ])
  const right = { stands: 'right' } as const
  const columns = [
    { heading: 'Surface' },
    { heading: 'Part' },
    { heading: 'Alga' },
    { heading: 'Cover, %', ...right },
    { heading: 'Grows, g dry a week', ...right },
    { heading: 'Left, g dry a week', ...right },
    { heading: 'Eaten by' },
  ]
  const parts = new Map(places.map((place) => [placeWords(place), place]))
  const reach = [...parts].map(([where, { surface, patch }]) => {
    const there = grazers.filter(({ gets }) => gets.includes(`${surface} ${patch}`))
    return `${where}: ${there.map(({ tradeName }) => tradeName).join(', ') || 'nobody of this crew'}`
  })
  return [
    `Reach of the crew of ${system.name} in the week from ${dateOf(asOf, system.timeZone)}`,
    ...(rows.length === 0 ? ['Next to nothing grows that is not wanted.'] : [table(columns, rows)]),
    ...listed('Who gets where', reach),
    ...listed('Where most is left', exposed.flatMap(exposedWords)),
  ].join('\n\n')
}

const placeWords = ({ surface, patch }: Pick<PlaceReach, 'surface' | 'patch'>): string =>
  `${surface}, ${patchWords[patch]}`

/** A place with the reason and what to do there, the cautions of each deed ahead of it. */
const exposedWords = (place: Exposed): readonly string[] => [
  `${placeWords(place)}: ${place.left_g_week.value.toPrecision(2)} g dry a week, most of it ${algaeKind(place.kind).title}. ${place.why}`,
  ...place.deeds.flatMap(({ says, cautions }) => [
    ...cautions.map(({ says: mind }) => `  Mind: ${mind}`),
    `  ${says}`,
  ]),
]
