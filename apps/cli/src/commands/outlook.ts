import { named } from '@holdfast/facts/names'
import { type Fan, type OutlookAnswer, outlook } from '@holdfast/inference'
import { dateOf, type SystemLog } from '@holdfast/logbook'
import { figure } from '../figure.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import type { WaterChange } from '../options.ts'
import { progress } from '../progress.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface OutlookOptions extends Where {
  readonly system?: string
  readonly days: number
  readonly waterChange?: WaterChange
  readonly members: number
  readonly seed: number
  readonly json?: true
}

/** The days after today that the table shows, besides the last. */
const shown = [0, 7, 14, 28, 42]

/** The forecast from the last day of the log on, in a table or as JSON. */
export async function outlookCommand(options: OutlookOptions, terminal: Terminal): Promise<void> {
  const { log } = await withLog(options, (logbook) => chooseSystem(logbook, options.system))
  const { system, observations, events, ownFacts, from, asOf } = log
  const { members, seed, days: horizonDays, waterChange } = options
  const running = progress(terminal, `Outlook over ${members} members`)
  const levers = waterChange === undefined ? {} : { levers: { waterChange } }
  const question = {
    system,
    observations,
    events,
    ownFacts,
    from,
    asOf,
    horizonDays,
    members,
    seed,
    ...levers,
  }
  const answer = outlook(question, running)
  running.done()
  const asked = { log, answer, options }
  terminal.out(options.json ? JSON.stringify(asJson(asked), null, 2) : inWords(asked))
}

interface Asked {
  readonly log: SystemLog
  readonly answer: OutlookAnswer
  readonly options: OutlookOptions
}

function asJson({ log, answer, options }: Asked): unknown {
  const { system, asOf, remarks } = log
  const { outlook: found, bands } = answer
  return {
    system: system.id,
    as_of: dateOf(asOf, system.timeZone),
    days: options.days,
    water_change: options.waterChange ?? null,
    members: found.members,
    effective_members: found.effectiveMembers,
    tempering: found.tempering,
    readings_used: found.readingsUsed,
    seed: options.seed,
    fans: found.fans.map(({ quantity, surface, algae, unit, days, quantiles }) => ({
      quantity,
      ...(surface === undefined ? {} : { surface }),
      ...(algae === undefined ? {} : { algae }),
      unit,
      dates: days.map((day) => dateOf(day, system.timeZone)),
      ...quantiles,
    })),
    coral_bands: bands.map(({ quantity, low, high, fact }) => ({ quantity, low, high, unit: fact.unit })),
    remarks: [...found.remarks, ...remarks],
  }
}

function inWords({ log, answer, options }: Asked): string {
  const { system, asOf } = log
  const { outlook: found, bands } = answer
  const { waterChange, days } = options
  const husbandry =
    waterChange === undefined
      ? 'husbandry as it is'
      : `${waterChange.volume_L} L changed every ${waterChange.every_days} d from then on`
  const rows = [...shown.filter((ahead) => ahead < days), days].map((ahead) => [
    ahead === 0 ? 'that day' : `+${ahead} d`,
    dateOf(asOf + ahead, system.timeZone),
    ...found.fans.map((fan) => at(fan, asOf + ahead)),
  ])
  const columns = found.fans.map((fan) => ({ heading: headingOf(fan), stands: 'right' as const }))
  return [
    `Outlook of ${system.name} from ${dateOf(asOf, system.timeZone)}, ${husbandry} (${found.members} members, ${found.effectiveMembers.toFixed(0)} of them in effect, ${found.readingsUsed} readings used, seed ${options.seed}; in brackets 90 % intervals)`,
    table([{ heading: 'Ahead' }, { heading: 'Date' }, ...columns], rows),
    bands.map(({ low, high, fact }) => `${fact.title}: ${low} to ${high} ${fact.unit}.`).join('\n'),
    ...[...found.remarks, ...log.remarks],
  ].join('\n\n')
}

function headingOf({ quantity, surface, algae, unit }: Fan): string {
  return unit === 'share' ? named(`${algae} on ${surface} (%)`) : `${quantity} (${unit})`
}

/** The figure of a fan on the day nearest to the one asked. */
function at({ days, unit, quantiles: { p05, p50, p95 } }: Fan, day: number): string {
  const nearest = days.reduce(
    (best, one, index) => (Math.abs(one - day) < Math.abs(days[best] - day) ? index : best),
    0,
  )
  const scale = unit === 'share' ? 100 : 1
  return figure({ value: scale * p50[nearest], low: scale * p05[nearest], high: scale * p95[nearest] })
}
