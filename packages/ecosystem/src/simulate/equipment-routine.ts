import { catalogueAlone } from '@holdfast/facts'
import { emptiedSetting } from '../events/filter-emptied.ts'
import type { Day } from '../log.ts'
import { activatedCarbonOf, carbonMass, carbonMassSetting } from '../processes/activated-carbon.ts'
import { carbonDosingOf, carbonIn, dosedCarbonSetting } from '../processes/carbon-dosing.ts'
import { filtersOf } from '../processes/mechanical-filters.ts'
import { swapCarbon } from './happenings.ts'
import { changesOf, daysOf, intervals } from './interval.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

/** Filters that are changed by the calendar; one without an interval is never changed. */
export function filterChanges({ system, events, from, to }: TimelineQuestion): readonly Moment[] {
  return filtersOf(system).flatMap(({ of: { filter, index } }) =>
    daysOf(intervals(filter.kind, 'changed_every_days', filter.changed_every_days, events, from), to).map(
      (day): Moment => ({ day, happens: 'filter emptied', with: { [emptiedSetting(index)]: 1 } }),
    ),
  )
}

/** Carbon that is placed and renewed by the calendar, unless the log says when. */
export function carbonChanges({
  system,
  facts = catalogueAlone,
  events,
  from,
  to,
}: TimelineQuestion): readonly Moment[] {
  const carbon = activatedCarbonOf(system)
  if (!carbon) return []
  const described = carbonMass(system, carbon, facts)
  const mass = (until: Day): number =>
    changesOf(carbon.kind, 'mass_g', events).findLast(({ day }) => day <= until)?.value ?? described
  const { placed } = carbon
  const first: readonly Moment[] =
    placed !== undefined && placed > from
      ? [{ day: from, set: { [carbonMassSetting]: 0 } }, ...swapCarbon(placed, mass(placed))]
      : []
  const logged = events.some((event) => event.kind === 'media placed' && event.medium === 'carbon')
  if (logged) return first
  const begin = intervals(
    carbon.kind,
    'replaced_every_days',
    carbon.replaced_every_days,
    events,
    placed ?? from,
  )
  const renewed = daysOf(begin, to).filter((day) => day > from)
  return [...first, ...renewed.flatMap((day) => swapCarbon(day, mass(day)))]
}

/** Carbon that is dosed since a day, or by a schedule. */
export function carbonDoses({
  system,
  facts = catalogueAlone,
  events,
  from,
}: TimelineQuestion): readonly Moment[] {
  const dosing = carbonDosingOf(system)
  if (!dosing) return []
  const set = (day: Day, dosed: number): Moment => ({ day, set: { [dosedCarbonSetting]: dosed } })
  // What began before the run begins with it, the latest last; a change in the log since then overrules it.
  const overruled = events.some(
    (event) => event.kind === 'equipment change' && event.equipment === dosing.kind && event.day <= from,
  )
  const scheduled = [...(dosing.schedule ?? [])]
    .filter(({ from_ }) => from_ > from || !overruled)
    .sort((a, b) => a.from_ - b.from_)
    .map(({ from_, mL_ethanol_per_day }) =>
      set(Math.max(from, from_), carbonIn('ethanol', mL_ethanol_per_day, facts)),
    )
  const { since, mL_per_day } = dosing
  if (since === undefined || since <= from || mL_per_day === undefined) return scheduled
  return [set(from, 0), set(since, carbonIn(dosing.substance ?? 'ethanol', mL_per_day, facts)), ...scheduled]
}
