import { type Account, account } from '../declare/account.ts'

const NPC = ['N', 'P', 'C'] as const

/** What has settled. */
export const bed = {
  fast: account('inside', 'bed.fast', 'Settled waste that rots in weeks', NPC),
  slow: account('inside', 'bed.slow', 'Settled waste that rots in a year', NPC),
  silica: account('inside', 'bed.silica', 'Silica of dead diatoms', ['Si']),
  precipitate: account('inside', 'bed.precipitate', 'Phosphate bound by lanthanum', ['P']),
  mineral: account('inside', 'bed.mineral', 'Phosphorus locked in bone and chalk', ['P']),
} as const

/** What rock and sand hold. */
export const rock = {
  sorbedFast: account('inside', 'rock.sorbed-fast', 'Phosphate on rock and sand, hours away', ['P']),
  sorbedSlow: account('inside', 'rock.sorbed-slow', 'Phosphate inside rock and sand, weeks away', ['P']),
  oxidisersFast: account('inside', 'rock.oxidisers-fast', 'Ammonia oxidisers of rich water', ['N']),
  oxidisersSlow: account('inside', 'rock.oxidisers-slow', 'Ammonia oxidisers of poor water', ['N']),
  nitriteFast: account('inside', 'rock.nitrite-oxidisers-fast', 'Nitrite oxidisers of rich water', ['N']),
  nitriteSlow: account('inside', 'rock.nitrite-oxidisers-slow', 'Nitrite oxidisers of poor water', ['N']),
  buried: account('inside', 'rock.buried', 'Dead matter in rock', NPC),
  exchangeable: account('inside', 'rock.exchangeable', 'Phosphate that dried rock gives back', ['P']),
} as const

export const media = {
  ferric: account('inside', 'media.ferric', 'Phosphate on ferric media', ['P']),
  carbon: account('inside', 'media.carbon', 'Organics on activated carbon', NPC),
} as const

/** What a mechanical filter holds until it is changed; filters are counted in the order of the equipment. */
export const heldByFilter = (index: number): Account =>
  account('inside', `filter.${index}`, `Held by mechanical filter ${index + 1}`, NPC)

export const animals = {
  fish: account('inside', 'animals.fish', 'Fish', NPC),
  corals: account('inside', 'animals.corals', 'Coral tissue', NPC),
  brought: account('inside', 'animals.brought', 'Animals added since the log began', NPC),
} as const
