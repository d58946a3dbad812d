import { account } from '../declare/account.ts'

const NPC = ['N', 'P', 'C'] as const

/** What has settled. */
export const bed = {
  fast: account('inside', 'bed.fast', 'Settled waste that rots in weeks', NPC),
  slow: account('inside', 'bed.slow', 'Settled waste that rots in a year', NPC),
} as const

/** What rock and sand hold. */
export const rock = {
  sorbedFast: account('inside', 'rock.sorbed-fast', 'Phosphate on rock and sand, hours away', ['P']),
  sorbedSlow: account('inside', 'rock.sorbed-slow', 'Phosphate inside rock and sand, weeks away', ['P']),
  oxidisersFast: account('inside', 'rock.oxidisers-fast', 'Ammonia oxidisers of rich water', ['N']),
  oxidisersSlow: account('inside', 'rock.oxidisers-slow', 'Ammonia oxidisers of poor water', ['N']),
  nitriteFast: account('inside', 'rock.nitrite-oxidisers-fast', 'Nitrite oxidisers of rich water', ['N']),
  nitriteSlow: account('inside', 'rock.nitrite-oxidisers-slow', 'Nitrite oxidisers of poor water', ['N']),
} as const

export const media = {
  ferric: account('inside', 'media.ferric', 'Phosphate on ferric media', ['P']),
} as const

export const animals = {
  fish: account('inside', 'animals.fish', 'Growth of the fish', NPC),
  brought: account('inside', 'animals.brought', 'Animals added since the log began', NPC),
} as const
