import { patchWords, type ReachedPlace, reached } from '@holdfast/crew-plan'
import { algaeKind, grazer, wantedKind } from '@holdfast/facts'
import { dateOf, type SystemLog } from '@holdfast/logbook'
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

/** Where the crew of today gets, what it eats in the coming week and what it leaves. */
export async function reachCommand(options: ReachOptions, terminal: Terminal): Promise<void> {
  const { log, present } = await presentIn(options, 'Reach', terminal)
  const places = reached(present)
  const { system, asOf } = log
  terminal.out(
    options.json
      ? JSON.stringify({ system: system.id, as_of: dateOf(asOf, system.timeZone), places }, null, 2)
      : inWords(log, places),
  )
}

/** What covers less of a place and grows less in a week is left out of the table. */
const shown = { cover: 0.005, grows_g_week: 0.005 }

function inWords({ system, asOf }: SystemLog, places: readonly ReachedPlace[]): string {
  const grown = places.filter(
    ({ kind, cover, grows_g_week }) =>
      !wantedKind(kind) && (cover >= shown.cover || grows_g_week >= shown.grows_g_week),
  )
  const rows = grown.map(({ surface, patch, kind, cover, grows_g_week, eaten, left_g_week }) => [
    surface,
    patchWords[patch],
    algaeKind(kind).title,
    (100 * cover).toFixed(0),
    grows_g_week.toPrecision(2),
    left_g_week.toPrecision(2),
    eaten.map(({ tradeName }) => tradeName).join(', ') || 'nobody',
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
  const parts = new Map(
    places.map((place) => [`${place.surface}, ${patchWords[place.patch]}`, place.reachedBy]),
  )
  const reach = [...parts].map(
    ([where, by]) =>
      `  ${where}: ${by.map((taxon) => grazer(taxon)?.tradeName ?? taxon).join(', ') || 'nobody of this crew'}`,
  )
  return [
    `Reach of the crew of ${system.name} in the week from ${dateOf(asOf, system.timeZone)}`,
    ...(rows.length === 0 ? ['Next to nothing grows that is not wanted.'] : [table(columns, rows)]),
    ['Who gets where', ...reach].join('\n'),
  ].join('\n\n')
}
