import type { Event } from '@holdfast/ecosystem'

/**
 * Where each stream runs in the picture. Order and width of the places never depend on what flows, so
 * that a change between spans is seen as a change of width and nothing jumps.
 */
export interface Place {
  /** Account outside the system, or the first part of the ids of accounts inside it. */
  readonly account: string
  /** Room in the picture, in shares of all room. */
  readonly room: number
  /** Short words under or over the stream, a line each. */
  readonly label: readonly string[]
  readonly title: string
  readonly dashed?: true
}

export const sources: readonly Place[] = [
  { account: 'outside.feed', room: 3, label: ['Feed'], title: 'Feed' },
  { account: 'outside.source-water', room: 1.2, label: ['Source', 'water'], title: 'Source water' },
  { account: 'outside.salt', room: 1, label: ['Salt', 'mix'], title: 'Salt mix' },
  { account: 'outside.dose', room: 1, label: ['Doses'], title: 'Doses' },
  { account: 'outside.rock', room: 1, label: ['New', 'rock'], title: 'New rock' },
  { account: 'outside.animals', room: 1, label: ['New', 'animals'], title: 'New animals' },
  { account: 'outside.air', room: 1, label: ['Air'], title: 'Fixed from the air' },
  { account: 'media.ferric', room: 1, label: ['Media'], title: 'Given back by ferric media' },
  {
    account: 'outside.unexplained',
    room: 1.3,
    label: ['Not', 'known'],
    title: 'Not explained',
    dashed: true,
  },
]

export const exports: readonly Place[] = [
  { account: 'outside.skimmate', room: 1.5, label: ['Foam'], title: 'Foam of the skimmer' },
  { account: 'outside.discarded-water', room: 2, label: ['Old', 'water'], title: 'Old water' },
  { account: 'outside.air', room: 1.5, label: ['Gas to', 'the air'], title: 'Nitrogen gas' },
  { account: 'outside.filter-waste', room: 1.2, label: ['Filter', 'waste'], title: 'Filter waste' },
  { account: 'outside.siphoned', room: 1, label: ['Siphon'], title: 'Waste siphoned out' },
  { account: 'outside.refugium-harvest', room: 1.2, label: ['Harvest'], title: 'Harvest of the refugium' },
  {
    account: 'outside.scrubber-harvest',
    room: 1.2,
    label: ['Turf', 'harvest'],
    title: 'Harvest of the screen',
  },
  { account: 'outside.hand-removed', room: 1.2, label: ['By', 'hand'], title: 'Algae by hand' },
  { account: 'media.ferric', room: 1.2, label: ['Media'], title: 'Ferric media' },
  { account: 'media.carbon', room: 1, label: ['Carbon'], title: 'Activated carbon' },
  { account: 'outside.animals', room: 1.2, label: ['Animals', 'gone'], title: 'Animals gone' },
  {
    account: 'outside.unexplained',
    room: 1.3,
    label: ['Not', 'known'],
    title: 'Not explained',
    dashed: true,
  },
]

export const basins: readonly Place[] = [
  { account: 'water', room: 1.3, label: ['Water'], title: 'The water' },
  { account: 'bed', room: 1.2, label: ['Waste'], title: 'Settled waste' },
  { account: 'rock', room: 1.1, label: ['Rock'], title: 'Rock and sand' },
  { account: 'surface', room: 1.3, label: ['Algae'], title: 'Algae' },
  { account: 'animals', room: 1.8, label: ['Animals'], title: 'Animals' },
  { account: 'filter', room: 1.3, label: ['Filter'], title: 'Held by filters' },
  { account: 'cultivated', room: 1.4, label: ['Grown', 'algae'], title: 'Refugium and screen' },
]

export const placeOf = (places: readonly Place[], account: string): Place =>
  places.find((place) => place.account === account) ?? { account, room: 1, label: ['Other'], title: account }

/** Accounts whose places are kept though nothing flows in a span. */
export interface KeptPlaces {
  readonly from: readonly string[]
  readonly to: readonly string[]
}

function placesOf(event: Event): KeptPlaces {
  switch (event.kind) {
    case 'water change':
      return { from: ['outside.source-water', 'outside.salt'], to: ['outside.discarded-water'] }
    case 'media placed':
      return { from: [], to: [event.medium === 'carbon' ? 'media.carbon' : 'media.ferric'] }
    case 'siphoning':
      return { from: [], to: ['outside.siphoned'] }
    case 'harvest':
      return {
        from: [],
        to: [event.from === 'refugium' ? 'outside.refugium-harvest' : 'outside.scrubber-harvest'],
      }
    case 'hand removal':
      return { from: [], to: ['outside.hand-removed'] }
    case 'dose':
      return { from: ['outside.dose'], to: [] }
    case 'rock added':
      return { from: ['outside.rock'], to: [] }
    case 'animals added':
      return { from: ['outside.animals'], to: [] }
    case 'animals lost':
      return { from: [], to: ['outside.animals'] }
    default:
      return { from: [], to: [] }
  }
}

/** What ever happened in the log keeps its place, so that a span in which it did not happen moves nothing. */
export function keptPlaces(events: readonly Event[]): KeptPlaces {
  const kept = events.map(placesOf)
  return { from: kept.flatMap(({ from }) => from), to: kept.flatMap(({ to }) => to) }
}

/** 'rock.sorbed-fast' belongs to the basin 'rock'. */
export const basinOf = (account: string) => account.split('.')[0] ?? account

/**
 * Ferric media stand outside the picture's basin, as in the border of the ecosystem package: what they
 * take out of the water is out of reach of what lives, though it leaves only when they are swapped.
 */
export const isOutside = (account: string) => basinOf(account) === 'outside' || basinOf(account) === 'media'
