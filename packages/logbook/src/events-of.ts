import type { Event, Medium } from '@holdfast/ecosystem'

import type { Entry, EntryOf } from './entries/entry.ts'

/** The day on the model's clock, and the entry that an event comes from. */
type When = Pick<Event, 'day' | 'entry'>

/** What an entry says to the model as events; none for a note, a description, or media of unknown mass. */
export function eventsOf(entry: Entry, when: When): readonly Event[] {
  switch (entry.kind) {
    case 'water-change': {
      const { volume_L, water } = entry.body
      return [{ ...when, kind: 'water change', volume_L, ...(water && { water }) }]
    }
    case 'feeding': {
      const { g_per_day, feed } = entry.body
      return [{ ...when, kind: 'feed change', g_per_day, ...(feed !== undefined && { feed }) }]
    }
    case 'media':
      return mediaEvents(entry.body, when)
    case 'siphoning': {
      const { part } = entry.body
      return [{ ...when, kind: 'siphoning', ...(part !== undefined && { part }) }]
    }
    case 'hand-removal': {
      const { surface, algae, share, leftToDrift } = entry.body
      return [{ ...when, kind: 'hand removal', surface, algae, share, leftToDrift }]
    }
    case 'animals':
      return [animalsEvent(entry.body, when)]
    case 'animals-moved': {
      const { taxon, count, to } = entry.body
      return [{ ...when, kind: 'animals moved', taxon, count, to }]
    }
    case 'dose':
      return [{ ...when, kind: 'dose', substance: entry.body.substance, mass_g: entry.body.mass_g }]
    case 'harvest':
      return [{ ...when, kind: 'harvest', from: entry.body.from, wet_g: entry.body.wet_g }]
    case 'equipment-change': {
      const { equipment, changes } = entry.body
      return [{ ...when, kind: 'equipment change', equipment, changes }]
    }
    case 'light-change': {
      const { surface, light_umol_m2_s, light_h_per_day } = entry.body
      return [
        {
          ...when,
          kind: 'light change',
          ...(surface !== undefined && { surface }),
          ...(light_umol_m2_s !== undefined && { light_umol_m2_s }),
          ...(light_h_per_day !== undefined && { light_h_per_day }),
        },
      ]
    }
    case 'rock-added':
      return [{ ...when, kind: 'rock added', rock: entry.body.rock }]
    default:
      return []
  }
}

function mediaEvents(body: EntryOf<'media'>['body'], when: When): readonly Event[] {
  const { action, mass_g } = body
  const medium: Medium = body.medium === 'activated carbon' ? 'carbon' : 'ferric'
  const removed: Event = { ...when, kind: 'media removed', medium }
  if (action === 'removed') return [removed]
  if (mass_g === undefined) return []
  const placed: Event = { ...when, kind: 'media placed', mass_g, medium }
  return action === 'placed' ? [placed] : [removed, placed]
}

function animalsEvent(body: EntryOf<'animals'>['body'], when: When): Event {
  const { change, taxon, count, mass_g, bodyTakenOut } = body
  const said = { ...when, taxon, count, ...(mass_g !== undefined && { mass_g }) }
  if (change === 'added') return { ...said, kind: 'animals added' }
  const out = change === 'taken out' ? true : bodyTakenOut
  return { ...said, kind: 'animals lost', ...(out !== undefined && { bodyTakenOut: out }) }
}
