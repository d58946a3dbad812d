import { harvestedSetting, scrapedSetting } from '../events/harvest.ts'
import type { Event } from '../log.ts'
import { bedsOf, type CultivatedBed } from '../processes/cultivated-beds.ts'
import { lightSetting } from '../processes/stands.ts'
import type { System } from '../system.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

type Harvest = Extract<Event, { readonly kind: 'harvest' }>

const isHarvest = (event: Event): event is Extract<Event, { kind: 'harvest' }> => event.kind === 'harvest'

/** Algae taken out; where a system has several beds of the kind, the first one. */
export function aHarvest({ day, from, wet_g }: Harvest, system: System): readonly Moment[] {
  const bed = bedsOf(system).find(({ kind }) => kind === from)
  return bed ? [{ day, happens: 'harvest', with: { [harvestedSetting(bed.id)]: wet_g } }] : []
}

/** Harvests of the log where a bed has any; else its routine, as if it had been kept. From today on the routine. */
export function harvests(question: TimelineQuestion): readonly Moment[] {
  return bedsOf(question.system).flatMap((bed) => routine(bed, question))
}

function routine(bed: CultivatedBed, { events, from, to, asOf }: TimelineQuestion): readonly Moment[] {
  const { item } = bed
  const every = item.harvest_every_days
  const taken = harvestOf(bed)
  if (every === undefined || every <= 0 || taken === undefined) return []
  const logged = events.filter(isHarvest).filter((event) => event.from === bed.kind)
  const told = item.kind === 'refugium' ? item.last_harvest : undefined
  const begin = logged.length > 0 ? asOf : from
  const known = logged.reduce((day, event) => Math.max(day, event.day), told ?? begin)
  const moments: Moment[] = []
  // The rhythm passes through the last harvest that is known.
  const first = known + (Math.floor((begin - known) / every) + 1) * every
  for (let day = first; day < to; day += every) moments.push({ day, happens: 'harvest', with: taken })
  return moments
}

function harvestOf({ id, item }: CultivatedBed): Readonly<Record<string, number>> | undefined {
  if (item.kind === 'turf scrubber') return { [scrapedSetting(id)]: 1 }
  return item.harvest_g_wet === undefined ? undefined : { [harvestedSetting(id)]: item.harvest_g_wet }
}

/** A lamp that went out and that nobody put on again. */
export function darkBeds({ system, from }: TimelineQuestion): readonly Moment[] {
  return bedsOf(system).flatMap(({ id, item }): readonly Moment[] =>
    item.kind === 'refugium' && item.light_off_since !== undefined
      ? [{ day: Math.max(from, item.light_off_since), set: { [lightSetting(id)]: 0 } }]
      : [],
  )
}
