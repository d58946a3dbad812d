import type { Equipment, Event, System } from '@holdfast/ecosystem'

/** The equipment of a description with what the log changed of it up to a day. */
export function equipmentToday(
  { equipment }: System,
  events: readonly Event[],
  day: number,
): readonly Equipment[] {
  const past = events.filter((event) => event.day <= day).toSorted((a, b) => a.day - b.day)
  return equipment.map((item) => past.reduce(changedBy, item))
}

function changedBy(item: Equipment, event: Event): Equipment {
  if (event.kind === 'equipment change' && event.equipment === item.kind)
    return { ...item, ...event.changes } as Equipment
  if (item.kind === 'ferric media reactor' && isOfFerric(event)) {
    if (event.kind === 'media removed') return { ...item, removed: event.day }
    const { removed: _, ...there } = item
    return { ...there, placed: event.day, mass_g: event.mass_g }
  }
  if (event.kind === 'harvest' && event.from === item.kind && item.kind === 'refugium')
    return { ...item, last_harvest: event.day }
  return item
}

type MediaEvent = Extract<Event, { readonly kind: 'media placed' | 'media removed' }>

const isOfFerric = (event: Event): event is MediaEvent =>
  (event.kind === 'media placed' || event.kind === 'media removed') && event.medium !== 'carbon'
