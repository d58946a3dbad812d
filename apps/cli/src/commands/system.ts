import type { System } from '@holdfast/ecosystem'
import { withOwnAnimals } from '@holdfast/facts'
import { composeEntry, dateOf, Refused, readSystemFile } from '@holdfast/logbook'
import { bytesOf } from '../bytes-of.ts'
import { allSystems, chooseSystem, type Where, withLog } from '../open-log.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'
import { writer } from '../writer.ts'

/** Stores a description; it holds from a day on, today where none is said. */
export async function systemAdd(
  path: string,
  options: Where & { readonly from?: string; readonly mend?: true; readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  const read = readSystemFile((await bytesOf(path)).toString('utf8'))
  if (!read.ok) throw new Refused(read.issues)
  const { system, document } = read
  const { issues } = withOwnAnimals(system.own_animals ?? [])
  if (issues.length > 0) throw new Refused(issues)
  const now = new Date()
  const at = options.from ?? dateOf(now.getTime() / 86_400_000, system.timeZone)
  const tells = options.mend ? 'mend' : 'change'
  const body = { tells, document: { ...document }, system } as const
  await withLog(options, async (logbook) => {
    const known = (await logbook.systems()).includes(system.id)
    const { workspace } = logbook
    const about = { workspace, system: system.id, kind: 'system', at, precision: 'day', body } as const
    await logbook.append([composeEntry({ ...about, ...writer }, now)])
    terminal.out(
      options.json
        ? JSON.stringify({ system: system.id, from: at, was_known: known })
        : `${system.name} (${system.id}) is ${known ? 'described anew' : 'in the log'}, as of ${at}.`,
    )
  })
}

export async function systemList(
  options: Where & { readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  const systems = await withLog(options, allSystems)
  const rows = systems.map(({ log }) => ({
    id: log.system.id,
    name: log.system.name,
    ...log.dates,
    entries: log.entries.length,
  }))
  if (options.json) terminal.out(JSON.stringify(rows, null, 2))
  else if (rows.length === 0)
    terminal.out('There is no system yet. Describe one in a file and run "holdfast system add FILE".')
  else
    terminal.out(
      table(
        [
          { heading: 'Id' },
          { heading: 'Name' },
          { heading: 'From' },
          { heading: 'To' },
          { heading: 'Entries', stands: 'right' },
        ],
        rows.map(({ id, name, from, to, entries }) => [id, name, from, to, String(entries)]),
      ),
    )
}

/** The description that holds on the last day of the log. */
export async function systemShow(
  id: string | undefined,
  options: Where & { readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, id))
  if (options.json) terminal.out(JSON.stringify(log.system, null, 2))
  else
    terminal.out(
      [
        `${log.system.name} (${log.system.id}), dates in ${log.system.timeZone}`,
        table([{ heading: 'Part' }, { heading: 'As described' }], partsOf(log.system)),
        ...log.remarks,
      ].join('\n\n'),
    )
}

function partsOf(system: System): string[][] {
  const { source_water, salt_mix, sand, corals, own_animals = [] } = system
  const water = ({ kind = 'kind not told', NO3_mg_L, PO4_mg_L }: System['source_water']): string => {
    const told = [
      ...(NO3_mg_L === undefined ? [] : [`${NO3_mg_L} mg/L NO3`]),
      ...(PO4_mg_L === undefined ? [] : [`${PO4_mg_L} mg/L PO4`]),
    ]
    return told.length > 0 ? told.join(', ') : `as usual: ${kind}`
  }
  return [
    ...system.vessels.map(({ id, kind, volume_L }) => ['Vessel', `${id} (${kind}): ${volume_L} L`]),
    ...system.surfaces.map((one) => [
      'Surface',
      `${one.id} (${one.kind}) in ${one.vessel}: ${one.area_m2} m2, ${one.light_umol_m2_s} µmol/m2/s for ${one.light_h_per_day} h/d`,
    ]),
    ...system.rock.map(({ kind, mass_kg, age_days }) => ['Rock', `${mass_kg} kg ${kind}, ${age_days} d old`]),
    ...(sand ? [['Sand', `${sand.mass_kg} kg, ${sand.depth_cm} cm deep`]] : []),
    [
      'Water',
      `${system.salinity_psu} psu, ${system.temperature_C} °C, ${system.evaporation_L_per_day} L/d evaporate`,
    ],
    ['Source water', water(source_water)],
    ['Salt mix', water(salt_mix)],
    ...system.feeds.map(({ kind, g_per_day }) => ['Feed', `${kind}: ${g_per_day} g/d as fed`]),
    ...system.equipment.map(({ kind }) => ['Equipment', kind]),
    ...system.animals.map(({ count, kind, role }) => ['Animals', `${count} ${kind} (${role})`]),
    ...own_animals.map(({ taxon, like }) => ['Own animal', `${taxon}, like ${like}`]),
    ...(corals ? [['Corals', `${corals.kind}: ${corals.area_m2} m2`]] : []),
    ...system.algae.map(({ kind, surface, cover }) => [
      'Algae',
      `${kind} on ${Math.round(100 * cover)} % of ${surface}`,
    ]),
  ]
}
