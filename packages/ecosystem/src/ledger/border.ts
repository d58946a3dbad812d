import type { Atom, Ledger } from '../ledger-types.ts'

/** What a stream across the border is called, on the page as in questions about a system. */
export type Source = 'feed' | 'source_water' | 'salt' | 'dose' | 'rock' | 'animals_added' | 'air'
export type Export =
  | 'foam'
  | 'water_change'
  | 'mechanical_filter'
  | 'siphoned_detritus'
  | 'ferric_media'
  | 'activated_carbon'
  | 'refugium_harvest'
  | 'scrubber_harvest'
  | 'hand_removed_algae'
  | 'animals_removed'
  | 'air'
  | 'unexplained'

const sources: Readonly<Record<string, Source>> = {
  'outside.feed': 'feed',
  'outside.source-water': 'source_water',
  'outside.salt': 'salt',
  'outside.dose': 'dose',
  'outside.rock': 'rock',
  'outside.minerals': 'rock',
  'outside.air': 'air',
  'outside.animals': 'animals_added',
  'outside.inorganic-carbon': 'air',
}

const destinations: Readonly<Record<string, Export>> = {
  'outside.skimmate': 'foam',
  'outside.discarded-water': 'water_change',
  'outside.filter-waste': 'mechanical_filter',
  'outside.siphoned': 'siphoned_detritus',
  'outside.air': 'air',
  'outside.refugium-harvest': 'refugium_harvest',
  'outside.scrubber-harvest': 'scrubber_harvest',
  'outside.hand-removed': 'hand_removed_algae',
  'outside.animals': 'animals_removed',
  'outside.unexplained': 'unexplained',
  'outside.inorganic-carbon': 'air',
}

const media: Readonly<Record<string, Export>> = {
  'media.ferric': 'ferric_media',
  'media.carbon': 'activated_carbon',
}

export interface Border {
  /** µmol over the span that came in and went out, by name. */
  readonly inputs: ReadonlyMap<Source, number>
  readonly exports: ReadonlyMap<Export, number>
  /** µmol that the inside holds more (or less) at the end. */
  readonly stored: number
}

/**
 * What crossed the border of the system in a span. Media count as an export when they take phosphate or
 * organics out of the water, though these leave only when they are swapped: they are no part of the living
 * system. What a filter holds is inside until it is changed, for it rots there.
 */
export function border(ledger: Ledger, atom: Atom): Border {
  const inputs = new Map<Source, number>()
  const exports = new Map<Export, number>()
  const add = <K>(map: Map<K, number>, key: K, amount: number): void => {
    map.set(key, (map.get(key) ?? 0) + amount)
  }
  for (const row of ledger.rows) {
    if (row.atom !== atom) continue
    const source = sources[row.from]
    const target = destinations[row.to]
    if (source !== undefined) add(inputs, source, row.amount_umol)
    // What fish burn of their feed goes from outside to outside: in and out at once.
    if (target !== undefined) add(exports, target, row.amount_umol)
    const medium = media[row.to]
    if (medium !== undefined) add(exports, medium, row.amount_umol)
  }
  let stored = 0
  for (const balance of ledger.balances)
    if (
      balance.atom === atom &&
      !balance.account.startsWith('outside.') &&
      media[balance.account] === undefined
    )
      stored += balance.end_umol - balance.start_umol
  return { inputs, exports, stored }
}
